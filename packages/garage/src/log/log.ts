import type { Collection } from '../record/collections.ts';
import { COLLECTIONS } from '../record/collections.ts';
import { isForbiddenName } from '../record/forbidden-names.ts';
import type { Garage } from '../record/schema.ts';
import type { Change, Step } from './change.ts';
import { compareChanges, EXISTS, entityKey, entityParts, WHOLE } from './change.ts';
import type { Conflict } from './conflict.ts';
import { Entity } from './entity.ts';
import { emptyGarage } from './empty-garage.ts';
import { patchCollection } from './patch-collection.ts';

/** A change that is kept but has no effect, because this version cannot read it; one plain sentence says why. */
export interface Problem {
  readonly change: Change;
  readonly sentence: string;
}

/** Says what is wrong with a change that came from elsewhere, or null. Must not depend on anything but the change. */
export type Check = (change: Change) => string | null;

/** A step as the history has it. */
export interface StepTaken extends Step {
  readonly device: string;
  readonly time: string;
  readonly changes: readonly Change[];
}

interface Taken {
  first: Change;
  readonly changes: Change[];
}

/**
 * The record: a set of changes and their fold, kept up to date change by change. `garage`, `conflicts` and `steps` are
 * worked out when asked for, each from what has changed since; unchanged parts of the garage stay the same objects.
 */
export class Log {
  private readonly check: Check;
  private readonly known = new Map<string, Change>();
  private readonly entities = new Map<string, Entity>();
  private readonly taken = new Map<string, Taken>();
  private readonly problemList: Problem[] = [];
  private readonly dirty = new Set<Entity>();
  private readonly conflicting = new Map<string, readonly Conflict[]>();
  private garageShown: Garage = emptyGarage();
  private stepsShown: readonly StepTaken[] | null = [];
  private latest: string | null = null;

  /** `check` is for changes that come from elsewhere; without it every change is believed. */
  constructor(check: Check = () => null) {
    this.check = check;
  }

  /** Adds changes in any order; those that are there already are passed over. Says how many were new. */
  add(changes: Iterable<Change>): number {
    const before = this.known.size;
    for (const change of changes) if (!this.known.has(change.id)) this.enter(change);
    return this.known.size - before;
  }

  get garage(): Garage {
    this.settle();
    return this.garageShown;
  }

  /** By entity, oldest field first. */
  get conflicts(): readonly Conflict[] {
    this.settle();
    return [...this.conflicting.entries()]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .flatMap(([, found]) => [...found].sort((a, b) => (a.field < b.field ? -1 : 1)));
  }

  get problems(): readonly Problem[] {
    return [...this.problemList].sort((a, b) => compareChanges(a.change, b.change));
  }

  /** Oldest first. */
  get steps(): readonly StepTaken[] {
    this.stepsShown ??= [...this.taken.values()].map(toStep).sort((a, b) => (before(a, b) ? -1 : 1));
    return this.stepsShown;
  }

  get size(): number {
    return this.known.size;
  }

  get stepCount(): number {
    return this.taken.size;
  }

  /** The greatest stamp seen; a change made now must be later. */
  get lastStamp(): string | null {
    return this.latest;
  }

  changes(): Iterable<Change> {
    return this.known.values();
  }

  change(id: string): Change | undefined {
    return this.known.get(id);
  }

  step(id: string): StepTaken | undefined {
    const taken = this.taken.get(id);
    return taken === undefined ? undefined : toStep(taken);
  }

  /** The unreplaced changes of one field, oldest first: what a new change of it replaces. */
  heads(entity: string, field: string): readonly Change[] {
    return this.entities.get(entity)?.heads(field) ?? [];
  }

  /** What a deletion replaces besides: the unreplaced changes of every field. */
  fieldHeads(entity: string): readonly Change[] {
    return this.entities.get(entity)?.fieldHeads() ?? [];
  }

  /** The fields a thing has or ever had. */
  fieldNames(entity: string): Iterable<string> {
    return this.entities.get(entity)?.fields.keys() ?? [];
  }

  private enter(change: Change): void {
    this.known.set(change.id, change);
    if (this.latest === null || change.time > this.latest) this.latest = change.time;
    const taken = this.taken.get(change.step.id);
    if (taken === undefined) this.taken.set(change.step.id, { first: change, changes: [change] });
    else {
      taken.changes.push(change);
      if (compareChanges(change, taken.first) < 0) taken.first = change;
    }
    this.stepsShown = null;
    const sentence = misfit(change) ?? this.check(change);
    if (sentence !== null) {
      this.problemList.push({ change, sentence });
      return;
    }
    let entity = this.entities.get(change.entity);
    if (entity === undefined) {
      entity = new Entity(change.entity, entityParts(change.entity));
      this.entities.set(change.entity, entity);
    }
    entity.enter(change);
    this.dirty.add(entity);
  }

  /** Brings garage and conflicts up to date with the entities that changed. */
  private settle(): void {
    if (this.dirty.size === 0) return;
    const touched = new Map<Collection, Entity[]>();
    let next: Garage = this.garageShown;
    for (const entity of this.dirty) {
      const conflicts = entity.conflicts();
      if (conflicts.length > 0) this.conflicting.set(entity.key, conflicts);
      else this.conflicting.delete(entity.key);
      if (entity.parts === null) next = { ...next, ...wholeFields(entity) };
      else {
        const list = touched.get(entity.parts.collection);
        if (list === undefined) touched.set(entity.parts.collection, [entity]);
        else list.push(entity);
      }
    }
    for (const collection of COLLECTIONS) {
      const list = touched.get(collection);
      if (list === undefined) continue;
      const placeOf = (id: string): Change | null =>
        this.entities.get(entityKey(collection, id))?.first ?? null;
      next = { ...next, [collection]: patchCollection(next[collection], list, placeOf) };
    }
    this.dirty.clear();
    this.garageShown = next;
  }
}

/** Name, currency and units; without a word on them, those of an empty garage. */
function wholeFields(entity: Entity): Partial<Garage> {
  const { name, currency, units } = emptyGarage();
  return { name, currency, units, ...entity.toObject() };
}

/** What no garage can hold, whatever the schema. */
function misfit({ entity, field, value }: Change): string | null {
  if (entity === WHOLE) {
    return ['name', 'currency', 'units'].includes(field)
      ? null
      : `The garage has no field "${field.slice(0, 60)}"; the change is kept for a version that knows it`;
  }
  const parts = entityParts(entity);
  if (parts === null || parts.id === '' || isForbiddenName(parts.id))
    return `"${entity.slice(0, 60)}" is nothing a garage can hold; the change is kept for a version that knows it`;
  if (isForbiddenName(field))
    return `A field cannot be called "${field}"; the change is kept and not applied`;
  if (field === EXISTS && typeof value !== 'boolean')
    return `Whether ${entity.slice(0, 100)} exists must be true or false; the change is kept and not applied`;
  return null;
}

function toStep({ first, changes }: Taken): StepTaken {
  const { step, device, time } = first;
  return { ...step, device, time, changes };
}

function before(a: StepTaken, b: StepTaken): boolean {
  return a.time === b.time ? a.id < b.id : a.time < b.time;
}
