import { z } from 'zod';
import { isForbiddenName } from '../record/forbidden-names.ts';
import { garageFile } from '../record/schema.ts';
import type { Change } from './change.ts';
import { EXISTS, entityParts, WHOLE } from './change.ts';
import type { Check } from './log.ts';
import { STAMP } from './stamp.ts';

const name = z.string().min(1).max(200);
const changeShape = z.strictObject({
  id: name,
  device: name.refine((text) => !isForbiddenName(text)),
  time: z.string().regex(STAMP),
  entity: name,
  field: name,
  value: z.json(),
  replaces: z.array(name),
  step: z.strictObject({ id: name, title: z.string().max(2000), undoes: name.optional() }),
});

export interface ReadChanges {
  readonly changes: readonly Change[];
  /** One plain sentence for each entry that is no change at all. */
  readonly refused: readonly string[];
}

/** The changes in something that came from elsewhere; their values are for `checkChange` to judge. Never throws. */
export function readChanges(input: unknown): ReadChanges {
  if (!Array.isArray(input))
    return { changes: [], refused: ['This is not a list of changes; nothing of it was taken'] };
  const changes: Change[] = [];
  const refused: string[] = [];
  input.forEach((entry: unknown, i) => {
    const read = changeShape.safeParse(entry);
    if (read.success) changes.push(toChange(read.data));
    else {
      const [issue] = read.error.issues;
      const where = issue === undefined || issue.path.length === 0 ? 'its form' : issue.path.join('.');
      refused.push(`Entry ${i + 1} is not a change (${where} is wrong) and was not taken`);
    }
  });
  return { changes, refused };
}

/** With the optional word left out rather than undefined. */
function toChange({ step: { undoes, ...step }, ...rest }: z.output<typeof changeShape>): Change {
  return { ...rest, step: undoes === undefined ? step : { ...step, undoes } };
}

/**
 * Holds the value of a change against the schema of the garage: null when it fits, else why the change is kept without effect. For
 * `fold` and `Log`, wherever changes come from another device.
 */
export const checkChange: Check = ({ entity, field, value }) => {
  if (field === EXISTS) return idFits(entity) ? null : sentence(entity, field, 'it cannot be an id');
  const schema = fieldSchema(entity, field);
  if (schema === null) return sentence(entity, field, 'this version knows no such field');
  const read = z.safeParse(schema, value === null ? undefined : value);
  if (!read.success)
    return sentence(entity, field, read.error.issues[0]?.message ?? 'the value does not fit');
  // Only what is written in full: no default stands in for a value, no text is turned into a number here.
  if (value === null)
    return read.data === undefined ? null : sentence(entity, field, 'it cannot be left out');
  return JSON.stringify(read.data).length > 0 && typeof read.data === typeof value
    ? null
    : sentence(entity, field, 'the value is not written in the unit of the field');
};

function fieldSchema(entity: string, field: string): z.core.$ZodType | null {
  const shape = entity === WHOLE ? garageFile.shape : tableOf(entity)?.valueType.shape;
  if (shape === undefined || !idFits(entity)) return null;
  return new Map<string, z.core.$ZodType>(Object.entries(shape)).get(field) ?? null;
}

function idFits(entity: string): boolean {
  const parts = entityParts(entity);
  if (entity === WHOLE) return true;
  return parts !== null && z.safeParse(tableOf(entity)?.keyType ?? z.never(), parts.id).success;
}

function tableOf(entity: string) {
  const parts = entityParts(entity);
  return parts === null ? undefined : garageFile.shape[parts.collection].unwrap();
}

function sentence(entity: string, field: string, why: string): string {
  return `${field.slice(0, 60)} of ${entity.slice(0, 100)} does not fit (${why}); the change is kept and not applied`;
}
