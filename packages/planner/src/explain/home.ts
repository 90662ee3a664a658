import type { KitState } from '@waymend/core/choosing/kit-state';
import type { PieceIndex } from '@waymend/core/choosing/problem';
import { gainOfAdding } from '@waymend/core/explaining/worth';
import type { Garage } from '@waymend/garage/record/schema';
import type { HomeAnswer } from '../answer/plan-answer.ts';
import type { Reading } from './reading.ts';
import { byBelonging, chanceOfLoss } from './reading.ts';

/** Pieces that would help only in company: for each, the least company found among the cures of the gaps. */
export type Company = ReadonlyMap<PieceIndex, readonly PieceIndex[]>;

/** One line for each owned belonging that stays home, with the best it could add alone (M10). */
export function stayHome(
  reading: Reading,
  state: KitState,
  company: Company,
  garage: Garage,
): readonly HomeAnswer[] {
  const out: HomeAnswer[] = [];
  for (const [id, pieces] of byBelonging(reading)) {
    const home = pieces.filter((p) => state.carried[p] !== 1 && reading.pieces[p]?.owned === true);
    const [one] = home;
    const piece = one === undefined ? undefined : reading.pieces[one];
    if (one === undefined || piece === undefined) continue;
    const gain = gainOfAdding(state, [one]);
    const couldAdd = chanceOfLoss(state.loss - gain) - chanceOfLoss(state.loss);
    const needs = gain > 0 ? [] : (company.get(one) ?? []).flatMap((p) => reading.pieces[p]?.name ?? []);
    out.push({
      id,
      name: piece.name,
      grams: home.reduce((sum, p) => sum + (reading.pieces[p]?.grams ?? 0), 0),
      copies: home.length,
      couldAdd,
      perKilogram: piece.grams > 0 ? couldAdd / (piece.grams / 1000) : 0,
      needs,
      why: reasonOf(
        reading,
        garage,
        id,
        piece.offers.length + piece.stock.length,
        gain,
        home.length < pieces.length,
        helps(reading, one),
      ),
    });
  }
  return out.sort((a, b) => b.couldAdd - a.couldAdd || b.grams - a.grams || (a.id < b.id ? -1 : 1));
}

/** Whether any way or stock of this trip names the piece at all. */
export function helps(reading: Reading, piece: PieceIndex): boolean {
  const { pieceWays, pieceEnough } = reading.compiled;
  const named = (lists: typeof pieceWays) => (lists.start[piece + 1] ?? 0) > (lists.start[piece] ?? 0);
  return named(pieceWays) || named(pieceEnough);
}

function reasonOf(
  reading: Reading,
  garage: Garage,
  id: string,
  powers: number,
  gain: number,
  someCome: boolean,
  named: boolean,
): HomeAnswer['why'] {
  const belonging = garage.belongings[id];
  if (belonging?.pin === 'never') return 'never';
  if (belonging?.doesNotFit === true) return 'does-not-fit';
  if (belonging !== undefined && belonging.state !== 'ready' && belonging.state !== 'unproven')
    return 'not-ready';
  if (powers === 0) return 'not-understood';
  if (gain > 0) return 'over-the-limit';
  return someCome || named ? 'double' : 'adds-nothing';
}
