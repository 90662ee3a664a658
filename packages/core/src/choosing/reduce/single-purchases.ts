import { settleReady } from './draft.ts';
import type { Draft } from './draft.ts';

/**
 * A piece that can only be bought singly needs no purchase variable.
 *
 * Carrying it means buying it; buying it without carrying it adds weight to limits (never takes any off, which is
 * checked) and cents, and gains nothing. So purchase = carried may be assumed, and its price and weights are put on the
 * piece. Every choice keeps its loss, grams and pieces; one with idle purchases becomes cheaper.
 */
export function foldSinglePurchases(draft: Draft): void {
  draft.pieces.forEach((piece, p) => {
    const { supply } = piece;
    if (!supply?.buy || supply.bundles.length > 0 || supply.buy.weights.some((weight) => weight < 0)) return;
    const { cents, weights } = supply.buy;
    piece.cents += cents;
    piece.weights = piece.weights.map((weight, row) => weight + (weights[row] ?? 0));
    piece.raw.bought.push(p);
    piece.supply = null;
    draft.changes++;
  });
  settleReady(draft);
}
