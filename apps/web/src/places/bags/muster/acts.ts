import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import type { StockOf } from '@waymend/garage/road/count-pieces';
import { countsOf, insideBag, piecesOut, stockInPiece, unaccounted } from '@waymend/garage/road/count-pieces';
import type { MusterStart } from '@waymend/garage/road/muster';
import { countIn, countSealedBag, openMuster } from '@waymend/garage/road/muster';

/** One press each: what a gloved thumb does to a muster. Pure; ids for new counts come from `newId`. */

/** What became of all pieces of a belonging that nobody has spoken of. */
export type Fate = 'back' | 'lost' | 'damaged' | 'used';

export type NewId = (wish: string) => string;

export interface Wanted {
  readonly belonging: string;
  readonly pieces: number;
}

/** Opens a muster and counts out what is there of what is wanted; pieces that another muster has out stay with it. */
export function openWith(
  garage: Garage,
  start: Omit<MusterStart, 'out'>,
  wanted: readonly Wanted[],
  newId: NewId,
): Result<Garage> {
  const out = wanted.flatMap(({ belonging, pieces }) => {
    const there = (garage.belongings[belonging]?.copies ?? 0) - piecesOut(garage, belonging);
    const go = Math.min(pieces, there);
    return go < 1 ? [] : [{ id: newId(belonging), belonging, pieces: go }];
  });
  return openMuster(garage, { ...start, out });
}

/** Everything of a count that is still out, to one fate. Of a stock, used up means that the pieces are empty. */
export function tick(garage: Garage, count: string, fate: Fate, stockOf: StockOf): Result<Garage> {
  const found = garage.counts[count];
  if (found === undefined) return ok(garage);
  const thing = garage.belongings[found.belonging];
  const perPiece = thing === undefined ? null : stockInPiece(thing, stockOf);
  const missing = unaccounted(found, perPiece);
  const amount = fate === 'used' && perPiece !== null ? missing * perPiece : missing;
  return countIn(garage, count, { [fate]: amount }, stockOf);
}

/** Every piece of these counts that nobody has spoken of is back: a whole bag in one press. */
export function tickAll(garage: Garage, counts: readonly string[], stockOf: StockOf): Result<Garage> {
  let next = garage;
  for (const count of counts) {
    const ticked = tick(next, count, 'back', stockOf);
    if (!ticked.ok) return ticked;
    next = ticked.value;
  }
  return ok(next);
}

/**
 * A bag whose seal is whole: what this muster counted out of it, and of which nobody has spoken, is counted anew by the one look
 * at the seal. Refused where an earlier count does not stand behind the seal.
 */
export function seal(garage: Garage, muster: string, bag: string, newId: NewId): Result<Garage> {
  const inside = new Set(insideBag(garage, bag));
  const untouched = new Set(
    countsOf(garage, muster).flatMap(([id, c]) =>
      inside.has(c.belonging) && c.back + c.lost + c.damaged + c.used === 0 ? [id] : [],
    ),
  );
  const counts = Object.fromEntries(Object.entries(garage.counts).filter(([id]) => !untouched.has(id)));
  return countSealedBag({ ...garage, counts }, muster, bag, newId);
}
