import type { Change } from './change.ts';
import { compareChanges } from './change.ts';
import { sameValue } from './same-value.ts';

/**
 * What is known of one field: the changes nothing has replaced, oldest first. More than one: devices that did not know of
 * each other wrote it, and all their values are kept.
 */
export class Register {
  heads: readonly Change[] = [];
  /** By id, the latest change that says it replaces it; what is replaced may arrive afterwards. */
  private replacedBy: Map<string, Change> | null = null;

  /** In any order and at most once a change; the outcome does not depend on the order. */
  enter(change: Change): void {
    if (change.replaces.length > 0) {
      this.replacedBy ??= new Map();
      for (const id of change.replaces) {
        const other = this.replacedBy.get(id);
        if (other === undefined || compareChanges(other, change) < 0) this.replacedBy.set(id, change);
      }
      this.heads = this.heads.filter((head) => !this.isReplaced(head));
    }
    if (this.isReplaced(change)) return;
    this.heads = this.heads.length === 0 ? [change] : [...this.heads, change].sort(compareChanges);
  }

  /** Only a later change can replace one, so that not even a forged circle leaves a field without a value. */
  isReplaced(change: Change): boolean {
    const by = this.replacedBy?.get(change.id);
    return by !== undefined && compareChanges(by, change) > 0;
  }

  /** The value shown: the latest. Undefined when there is none. */
  get shown(): Change | undefined {
    return this.heads.at(-1);
  }

  /** Whether the values kept differ. */
  get disagrees(): boolean {
    const [first, ...rest] = this.heads;
    return first !== undefined && rest.some((head) => !sameValue(head.value, first.value));
  }
}
