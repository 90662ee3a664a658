import type { Garage } from '../record/schema.ts';
import { COLLECTIONS } from '../record/collections.ts';
import type { Change } from './change.ts';
import { EXISTS, entityKey, WHOLE } from './change.ts';
import type { Log } from './log.ts';
import type { Author } from './pen.ts';
import { Pen } from './pen.ts';
import { fieldsOf, sameValue } from './same-value.ts';

type Table = Readonly<Record<string, object>>;

/**
 * The changes that lead from the garage of the log to `after`, as one step; none when nothing differs. Tables and entities that
 * are the same objects are not looked into, so an edit of one belonging costs one pass over the ids.
 */
export function changesBetween(log: Log, after: Garage, author: Author): readonly Change[] {
  const before = log.garage;
  const pen = new Pen(author);
  for (const field of ['name', 'currency', 'units'] as const)
    if (before[field] !== after[field]) pen.write(WHOLE, field, after[field], log.heads(WHOLE, field));
  for (const collection of COLLECTIONS) {
    const [old, now]: [Table, Table] = [before[collection], after[collection]];
    if (old === now) continue;
    const ids = Object.keys(now);
    let created = 0;
    for (const id of ids) {
      const is = now[id];
      // Most are the same object, and that is all there is to ask of them.
      if (is === undefined || is === old[id]) continue;
      const was = Object.hasOwn(old, id) ? old[id] : undefined;
      const entity = entityKey(collection, id);
      if (was === undefined) {
        create(log, pen, entity, is);
        created += 1;
      } else change(log, pen, entity, was, is);
    }
    const former = Object.keys(old);
    if (former.length === ids.length - created) continue;
    for (const id of former) if (!Object.hasOwn(now, id)) writeDeletion(log, pen, entityKey(collection, id));
  }
  return pen.written;
}

/** A deletion replaces all that was known of the thing, so that an edit it did not know of can be told. */
export function writeDeletion(log: Log, pen: Pen, entity: string): void {
  pen.write(entity, EXISTS, false, [...log.heads(entity, EXISTS), ...log.fieldHeads(entity)]);
}

function change(log: Log, pen: Pen, entity: string, was: object, is: object): void {
  const [old, now] = [fieldsOf(was), fieldsOf(is)];
  for (const [field, value] of now)
    if (!old.has(field) || !sameValue(old.get(field), value))
      pen.write(entity, field, value, log.heads(entity, field));
  for (const field of old.keys())
    if (!now.has(field)) pen.write(entity, field, null, log.heads(entity, field));
}

/** A thing of this id may have been there before: what was then said of it is replaced, not brought back. */
function create(log: Log, pen: Pen, entity: string, is: object): void {
  const now = fieldsOf(is);
  pen.write(entity, EXISTS, true, log.heads(entity, EXISTS));
  const write = (field: string, value: unknown): void => {
    const heads = log.heads(entity, field);
    const [only] = heads;
    if (heads.length === 1 && only !== undefined && sameValue(only.value, value)) return;
    pen.write(entity, field, value, heads);
  };
  for (const [field, value] of now) write(field, value);
  for (const field of log.fieldNames(entity)) if (!now.has(field)) write(field, null);
}
