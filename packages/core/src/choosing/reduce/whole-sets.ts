import { IN, OPEN, OUT, REPLACED, takeAlong } from './draft.ts';
import type { Draft } from './draft.ts';

/**
 * A set carried whole, whose members can be had in no other way, becomes one piece.
 *
 * Its rows say x(member) >= B and x(member) <= B for every member, so all of them equal B in every feasible choice. One
 * member can stand for B and the rest: grams, weights, cents and piece counts are added up, the case and the price of
 * the set included, and every way that asks for any member asks for the one. Choices correspond one to one, with equal
 * loss, grams, pieces and cents.
 */
export function mergeWholeSets(draft: Draft): void {
  draft.bundles.forEach((bundle, b) => {
    if (!bundle.whole || bundle.state !== OPEN) return;
    const members: number[] = [];
    draft.pieces.forEach((piece, p) => {
      if (piece.wholes.includes(b)) members.push(p);
    });
    const tied = members.every((p) => {
      const piece = draft.pieces[p];
      const live = draft.state[p] === OPEN || draft.state[p] === IN;
      return live && piece?.wholes.length === 1 && piece.supply?.bundles.length === 1 && !piece.supply.buy;
    });
    const [first, ...others] = members;
    const one = first === undefined ? undefined : draft.pieces[first];
    if (!tied || first === undefined || !one) return;

    const pinned = members.some((p) => draft.state[p] === IN);
    one.grams += bundle.grams;
    one.cents += bundle.cents;
    one.weights = one.weights.map((weight, row) => weight + (bundle.weights[row] ?? 0));
    for (const p of others) {
      const piece = draft.pieces[p];
      if (!piece) continue;
      one.grams += piece.grams;
      one.count += piece.count;
      one.weights = one.weights.map((weight, row) => weight + (piece.weights[row] ?? 0));
      one.raw.carried.push(...piece.raw.carried);
      piece.supply = null;
      piece.wholes = [];
      draft.state[p] = REPLACED;
      draft.standsFor.set(p, [first]);
    }
    one.raw.bundles.push(b);
    one.supply = null;
    one.wholes = [];
    bundle.state = OUT;
    draft.changes++;
    if (pinned) {
      draft.state[first] = OPEN;
      takeAlong(draft, first);
    }
  });
}
