import type { Garage } from '../record/schema.ts';
import { belonging } from '../record/schema.ts';
import type { IdMaker } from './import-into.ts';
import { idFromContent } from './import-into.ts';
import type { NotUnderstood } from './reading.ts';

/** Adds a line that was not understood as the owner's own thing: counted and carried, but nothing is planned with it. */
export function addAsOwnThing(
  garage: Garage,
  line: Pick<NotUnderstood, 'text'>,
  grams?: number,
  makeId: IdMaker = idFromContent,
): { readonly garage: Garage; readonly id: string } {
  const id = makeId(line.text, (candidate) => Object.hasOwn(garage.belongings, candidate));
  const text = line.text.slice(0, 200);
  const own = belonging.parse({ name: text, line: text, ...(grams === undefined ? {} : { grams }) });
  return { garage: { ...garage, belongings: { ...garage.belongings, [id]: own } }, id };
}
