import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { IdMaker } from './import/import-into.ts';
import { idFromContent } from './import/import-into.ts';
import type { NotUnderstood } from './import/reading.ts';
import type { Belonging, Garage } from './record/schema.ts';
import { belonging } from './record/schema.ts';

/** A new garage with fields of one belonging changed; refuses an id that is not there. */
export function changeBelonging(garage: Garage, id: string, fields: Partial<Belonging>): Result<Garage> {
  const before = Object.hasOwn(garage.belongings, id) ? garage.belongings[id] : undefined;
  if (before === undefined) return unknown(id);
  return ok({ ...garage, belongings: { ...garage.belongings, [id]: { ...before, ...fields } } });
}

/** A new garage without a belonging; with a boxed set go the things inside it. */
export function removeBelonging(garage: Garage, id: string): Result<Garage> {
  if (!Object.hasOwn(garage.belongings, id)) return unknown(id);
  const kept = Object.entries(garage.belongings).filter(
    ([other, { inside }]) => other !== id && inside !== id,
  );
  return ok({ ...garage, belongings: Object.fromEntries(kept) });
}

/** Says how a boxed set travels: 'whole' in its case, or 'loose', each piece for itself. */
export function carrySet(garage: Garage, id: string, carry: 'whole' | 'loose'): Result<Garage> {
  const box = Object.hasOwn(garage.belongings, id) ? garage.belongings[id] : undefined;
  if (box?.set === undefined)
    return refuse('not-a-set', `"${id}" is not a boxed set; choose one that has contents`);
  return changeBelonging(garage, id, { set: { ...box.set, carry } });
}

/** The ids of what is inside a boxed set. */
export function contentsOf(garage: Garage, id: string): readonly string[] {
  return Object.entries(garage.belongings).flatMap(([other, { inside }]) => (inside === id ? [other] : []));
}

/** Takes one piece out of its boxed set for good: it stays a belonging of its own. */
export function takeOutOfSet(garage: Garage, id: string): Result<Garage> {
  const piece = Object.hasOwn(garage.belongings, id) ? garage.belongings[id] : undefined;
  if (piece === undefined) return unknown(id);
  const { inside: _, ...alone } = piece;
  return ok({ ...garage, belongings: { ...garage.belongings, [id]: alone } });
}

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

function unknown(id: string): Result<never> {
  return refuse(
    'belonging-unknown',
    `There is no belonging "${id.slice(0, 64)}"; look at the list of belongings`,
  );
}
