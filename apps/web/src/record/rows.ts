import type { Change } from '@waymend/garage/log/change';

/** Part of one step as it is stored: its changes share their step, and so does what the browser writes. */
export interface Batch {
  readonly garage: string;
  /** The id of its first change. */
  readonly id: string;
  readonly changes: readonly Change[];
}

const LARGEST_BATCH = 1000;

export function batchesOf(garage: string, changes: readonly Change[]): readonly Batch[] {
  const batches: Batch[] = [];
  for (let at = 0; at < changes.length; at += LARGEST_BATCH) {
    const part = changes.slice(at, at + LARGEST_BATCH);
    const [first] = part;
    if (first !== undefined) batches.push({ garage, id: first.id, changes: part });
  }
  return batches;
}

/** The changes of a row that was read; what is not a change at all is left where it is. */
export function changesIn(row: unknown): readonly Change[] {
  const changes: unknown = field(row, 'changes');
  return Array.isArray(changes) ? changes.filter(isChange) : [];
}

function isChange(value: unknown): value is Change {
  const step = field(value, 'step');
  const undoes = field(step, 'undoes');
  const replaces = field(value, 'replaces');
  return (
    ['id', 'device', 'time', 'entity', 'field'].every((key) => typeof field(value, key) === 'string') &&
    field(value, 'value') !== undefined &&
    Array.isArray(replaces) &&
    replaces.every((id) => typeof id === 'string') &&
    typeof field(step, 'id') === 'string' &&
    typeof field(step, 'title') === 'string' &&
    (undoes === undefined || typeof undoes === 'string')
  );
}

/** One field of something whose shape is not known. */
export function field(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;
}
