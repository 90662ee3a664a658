import type { Collection } from '../record/collections.ts';
import { isCollection } from '../record/collections.ts';

/** One step of the owner's: the changes of it are made, shown and undone together. */
export interface Step {
  /** The id of its first change. */
  readonly id: string;
  /** What was done, in plain words: 'Weighed: ratchet 1/2'. */
  readonly title: string;
  /** The step this one takes back; a step that takes back an undo is a redo. */
  readonly undoes?: string;
}

/** One change of one field (M15). Never altered and never removed: a set of them is the whole record. */
export interface Change {
  /** `device` and a counter of that device, so that a union by id is a merge. */
  readonly id: string;
  /** Installation and session, see `installationOf`. */
  readonly device: string;
  /** Hybrid logical clock, sortable as text: ./stamp.ts. */
  readonly time: string;
  /** 'belongings/b12', or 'garage' for what is said of the whole. */
  readonly entity: string;
  /** A field of that entity, or `EXISTS`. */
  readonly field: string;
  /** The whole new value, as JSON has it; null where the field is no longer there; true or false for `EXISTS`. */
  readonly value: unknown;
  /** Ids of the changes of this field it saw and stands in place of; a deletion names those of every field. */
  readonly replaces: readonly string[];
  readonly step: Step;
}

/** Whether a thing is there at all: true when created or restored, false when deleted. No entity has a field of this name. */
export const EXISTS = 'exists';

/** The entity whose fields are name, currency and units. */
export const WHOLE = 'garage';

export function entityKey(collection: Collection, id: string): string {
  return `${collection}/${id}`;
}

/** Taught words may hold a slash: only the first one separates. Null for the whole garage and for unknown collections. */
export function entityParts(entity: string): { readonly collection: Collection; readonly id: string } | null {
  const slash = entity.indexOf('/');
  const collection = entity.slice(0, Math.max(slash, 0));
  return isCollection(collection) ? { collection, id: entity.slice(slash + 1) } : null;
}

const COUNTER_DIGITS = 7;

/** Sorts as text in the order of the counter. */
export function changeId(device: string, counter: number): string {
  return `${device}.${counter.toString(36).padStart(COUNTER_DIGITS, '0')}`;
}

/** Every session (a tab, a run) counts for itself; the installation is what they share. */
export function deviceOf(installation: string, session: string): string {
  return `${installation}.${session}`;
}

export function installationOf(device: string): string {
  const dot = device.indexOf('.');
  return dot < 0 ? device : device.slice(0, dot);
}

/** A total order in which no change comes before one it replaces. */
export function compareChanges(a: Change, b: Change): number {
  return compareText(a.time, b.time) || compareText(a.device, b.device) || compareText(a.id, b.id);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
