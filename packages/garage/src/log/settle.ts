import type { Change } from './change.ts';
import { EXISTS } from './change.ts';
import { writeDeletion } from './changes-between.ts';
import type { Conflict } from './conflict.ts';
import type { Log } from './log.ts';
import type { Author } from './pen.ts';
import { Pen } from './pen.ts';

/**
 * Ends a conflict with one value, which need not be one of those in dispute: for a field its value (null: not there), for `EXISTS`
 * true to keep the thing or false to let it go. It replaces every value that is known now.
 */
export function settle(
  log: Log,
  { entity, field }: Pick<Conflict, 'entity' | 'field'>,
  value: unknown,
  author: Author,
): readonly Change[] {
  const pen = new Pen(author);
  if (field === EXISTS && value !== true) writeDeletion(log, pen, entity);
  else pen.write(entity, field, value, log.heads(entity, field));
  return pen.written;
}
