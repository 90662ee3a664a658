import type { Collection } from '../record/collections.ts';
import type { Change } from './change.ts';
import { compareChanges, EXISTS } from './change.ts';
import type { Conflict } from './conflict.ts';
import { Register } from './register.ts';

/** All that is known of one thing. What is deleted keeps its fields, so that it can be restored whole. */
export class Entity {
  readonly key: string;
  /** Null for the whole garage, which is always there. */
  readonly parts: { readonly collection: Collection; readonly id: string } | null;
  readonly fields = new Map<string, Register>();
  readonly existence = new Register();
  /** The earliest word of its existence gives its place among the others. */
  first: Change | null = null;
  /** An earlier word than the one known came in: its place among the others may be another. */
  moved = false;

  constructor(key: string, parts: Entity['parts']) {
    this.key = key;
    this.parts = parts;
  }

  enter(change: Change): void {
    if (change.field === EXISTS) {
      this.existence.enter(change);
      if (this.first !== null && compareChanges(change, this.first) > 0) return;
      this.moved = this.first !== null;
      this.first = change;
      return;
    }
    let register = this.fields.get(change.field);
    if (register === undefined) {
      register = new Register();
      this.fields.set(change.field, register);
    }
    register.enter(change);
  }

  heads(field: string): readonly Change[] {
    return field === EXISTS ? this.existence.heads : (this.fields.get(field)?.heads ?? []);
  }

  /** Every unreplaced change of every field, which a deletion replaces. */
  fieldHeads(): readonly Change[] {
    return [...this.fields.values()].flatMap(({ heads }) => heads);
  }

  /** Whether it is shown, and what disagrees about that. */
  standing(): { readonly visible: boolean; readonly conflict: Conflict | null } {
    if (this.parts === null) return { visible: true, conflict: null };
    const { heads } = this.existence;
    const gone = heads.filter(({ value }) => value !== true);
    if (gone.length === 0) return { visible: heads.length > 0, conflict: null };
    const there = heads.filter(({ value }) => value === true);
    // An edit that no deletion knew of speaks for the thing.
    const edits = this.fieldHeads().filter((head) => !this.existence.isReplaced(head));
    const voices = there.length > 0 ? there : edits;
    if (voices.length === 0) return { visible: false, conflict: null };
    const values = [
      ...gone.map((change) => ({ value: false, change })),
      ...voices.map((change) => ({ value: true, change })),
    ].sort((a, b) => compareChanges(a.change, b.change));
    return { visible: true, conflict: { entity: this.key, field: EXISTS, values } };
  }

  /** The fields that have several values, as long as the thing is shown. */
  conflicts(): readonly Conflict[] {
    const { visible, conflict } = this.standing();
    if (!visible) return [];
    const found: Conflict[] = conflict === null ? [] : [conflict];
    for (const [field, register] of this.fields) {
      if (!register.disagrees) continue;
      const values = register.heads.map((change) => ({ value: change.value, change }));
      found.push({ entity: this.key, field, values });
    }
    return found;
  }

  /** As the garage has it. */
  toObject(): object {
    const shown: [string, unknown][] = [];
    for (const [field, register] of this.fields) {
      const value = register.shown?.value ?? null;
      if (value !== null) shown.push([field, value]);
    }
    // Not the order in which the changes came in, which differs from device to device.
    return Object.fromEntries(shown.sort(([a], [b]) => (a < b ? -1 : 1)));
  }
}
