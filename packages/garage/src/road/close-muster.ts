import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Belonging, Garage } from '../record/schema.ts';
import type { Count, StockOf } from './count-pieces.ts';
import { calledBy, countsOf, stockInPiece, unaccounted } from './count-pieces.ts';
import { addEntry } from './add-entry.ts';
import { openOne } from './muster.ts';

/** Names said before "and so many more". */
const NAMED = 5;

/** Pieces of a muster that nobody has accounted for. */
export interface Missing {
  readonly count: string;
  readonly belonging: string;
  readonly pieces: number;
}

/** What has to be found, or given up, before the bonnet closes. */
export function missingPieces(garage: Garage, muster: string, stockOf: StockOf): readonly Missing[] {
  return countsOf(garage, muster).flatMap(([count, counted]) => {
    const thing = garage.belongings[counted.belonging];
    const pieces = unaccounted(counted, thing === undefined ? null : stockInPiece(thing, stockOf));
    return pieces === 0 ? [] : [{ count, belonging: counted.belonging, pieces }];
  });
}

/**
 * Closes a muster: takes what was lost and used up off the record, sets what was damaged aside, all in one step. Refused, by
 * name, while pieces are unaccounted for. `newId` gives an id for what becomes a belonging of its own: damaged copies, and
 * a piece of a stock that was begun.
 */
export function closeMuster(
  garage: Garage,
  id: string,
  on: string,
  stockOf: StockOf,
  newId: (wish: string) => string,
): Result<Garage> {
  const open = openOne(garage, id);
  if (!open.ok) return open;
  if (on < open.value.openedOn)
    return refuse(
      'date-before',
      `The muster was opened on ${open.value.openedOn} and cannot be closed before, on ${on}`,
    );
  const missing = missingPieces(garage, id, stockOf);
  if (missing.length > 0) {
    const names = missing.map(
      ({ belonging, pieces }) => `${pieces === 1 ? '' : `${pieces} of `}${calledBy(garage, belonging)}`,
    );
    const more = names.length > NAMED ? ` and ${names.length - NAMED} more` : '';
    return refuse(
      'muster-unaccounted',
      `Not yet accounted for: ${names.slice(0, NAMED).join(', ')}${more}; find each, or say that it is lost, damaged or used`,
    );
  }
  let next: Garage = { ...garage, musters: { ...garage.musters, [id]: { ...open.value, closedOn: on } } };
  for (const [, count] of countsOf(garage, id)) {
    const settled = settle(next, count, stockOf, newId);
    if (!settled.ok) return settled;
    next = settled.value;
  }
  return ok(next);
}

function settle(
  garage: Garage,
  count: Count,
  stockOf: StockOf,
  newId: (wish: string) => string,
): Result<Garage> {
  const { belonging: id, lost, damaged, used, missingParts } = count;
  const before = garage.belongings[id];
  if (before === undefined) return ok(garage);
  const perPiece = stockInPiece(before, stockOf);
  const sound = before.copies - lost - damaged;
  const left =
    perPiece === null ? piecesLeft(before, sound - used) : stockLeft(before, perPiece, sound, used);
  let [first, ...others]: readonly Belonging[] = left;
  if (damaged > 0) {
    const broken: Belonging = { ...before, copies: damaged, state: 'damaged' };
    if (first === undefined) first = broken;
    else others = [...others, broken];
  }
  if (first !== undefined && missingParts.length > 0 && first.state === 'ready')
    first = { ...first, state: 'unproven' };
  const { stock: _, ...bare } = before;
  let next: Garage = {
    ...garage,
    belongings: { ...garage.belongings, [id]: first ?? { ...bare, copies: 0 } },
  };
  for (const other of others) {
    const added = addEntry(next, 'belongings', newId(id), other);
    if (!added.ok) return added;
    next = added.value;
  }
  return ok(next);
}

function piecesLeft(before: Belonging, copies: number): readonly Belonging[] {
  return copies > 0 ? [{ ...before, copies }] : [];
}

/** Full pieces, and one that is begun; empty ones are gone. */
function stockLeft(before: Belonging, perPiece: number, pieces: number, used: number): readonly Belonging[] {
  const units = Math.round((pieces * perPiece - used) * 1e6) / 1e6;
  if (!(perPiece > 0)) return piecesLeft(before, pieces);
  const full = Math.floor(units / perPiece);
  const rest = Math.round((units - full * perPiece) * 1e6) / 1e6;
  return [
    ...(full > 0 ? [{ ...before, copies: full }] : []),
    ...(rest > 0 ? [{ ...before, copies: 1, stock: rest }] : []),
  ];
}
