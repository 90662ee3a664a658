import type { Change } from './change.ts';
import { compareChanges } from './change.ts';
import type { Entity } from './entity.ts';

type Table = Readonly<Record<string, object>>;

/**
 * A table with some of its entities brought up to date; the others stay the same objects. Entities stand in the order in which they first
 * came to be, whatever the order in which the changes arrived (ids that are whole numbers come first, as objects have it).
 */
export function patchCollection(
  table: Table,
  changed: readonly Entity[],
  placeOf: (id: string) => Change | null,
): Table {
  const added: string[] = [];
  const removed = new Set<string>();
  const values = new Map<string, object>();
  let sorted = true;
  for (const entity of changed) {
    if (entity.parts === null) continue;
    const { id } = entity.parts;
    if (entity.moved) sorted = false;
    entity.moved = false;
    if (entity.standing().visible) {
      values.set(id, entity.toObject());
      if (!Object.hasOwn(table, id)) added.push(id);
    } else if (Object.hasOwn(table, id)) removed.add(id);
  }
  if (values.size === 0 && removed.size === 0) return table;
  if (sorted && added.length === 0 && removed.size === 0) return { ...table, ...Object.fromEntries(values) };
  const byPlace = (a: string, b: string): number => {
    const [left, right] = [placeOf(a), placeOf(b)];
    return left === null || right === null ? 0 : compareChanges(left, right);
  };
  const kept = Object.keys(table).filter((id) => !removed.has(id));
  added.sort(byPlace);
  const last = kept.at(-1);
  const [firstAdded] = added;
  const ids = [...kept, ...added];
  if (last !== undefined && firstAdded !== undefined && byPlace(last, firstAdded) > 0) sorted = false;
  if (!sorted) ids.sort(byPlace);
  return Object.fromEntries(
    ids.flatMap((id) => {
      const value = values.get(id) ?? table[id];
      return value === undefined ? [] : [[id, value]];
    }),
  );
}
