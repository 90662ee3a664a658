import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Belonging, Garage } from './record/schema.ts';
import { removeEntity } from './remove.ts';

// Types only above: a page may edit without loading what reads files.

/** Fields that may be left out of a belonging again. */
export type Clearable = {
  [K in keyof Belonging]-?: undefined extends Belonging[K] ? K : never;
}[keyof Belonging];

/** A new garage with fields of one belonging changed and others left out; refuses an id that is not there. */
export function changeBelonging(
  garage: Garage,
  id: string,
  fields: Partial<Belonging>,
  clear: readonly Clearable[] = [],
): Result<Garage> {
  const before = Object.hasOwn(garage.belongings, id) ? garage.belongings[id] : undefined;
  if (before === undefined) return unknown(id);
  const after: Belonging = { ...before, ...fields };
  for (const field of clear) Reflect.deleteProperty(after, field);
  return ok({ ...garage, belongings: { ...garage.belongings, [id]: after } });
}

/** A new garage without a belonging; with a boxed set go the things inside it, and with each what was noted of it. */
export function removeBelonging(garage: Garage, id: string): Result<Garage> {
  return removeEntity(garage, 'belongings', id);
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

function unknown(id: string): Result<never> {
  return refuse(
    'belonging-unknown',
    `There is no belonging "${id.slice(0, 64)}"; look at the list of belongings`,
  );
}
