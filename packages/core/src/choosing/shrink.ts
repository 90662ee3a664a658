import type { ChoiceModel } from './model.ts';
import type { Need, Piece } from './problem.ts';
import { reduceFurther } from './reduce/reduce.ts';
import type { Reduced } from './reduce/reduce.ts';

/**
 * The problem without what a bound has ruled out, reduced again.
 *
 * `lower` and `upper` hold in every whole point of the (tight) model that is worth no less than the best plan known. Take a
 * choice S worth no less, and one whole point z of the model that gives S its own value. All bounds hold in z. So:
 * - a piece whose column is fixed is carried, or stays, in every such S: it is pinned;
 * - a need whose column is fixed at 1 is met: it becomes a must. (At 0 nothing is said: z may leave a met need at 0 when
 *   nothing it uses asks for it.)
 * - a way or option whose column is fixed at 0 is not used in z. Left out of the problem, z is still a point of the
 *   model of what is left, with the same value, so S keeps its value; other choices can only lose by it. Needs are asked
 *   for by options and ways only through these columns, so leaving out several at once is no different.
 * Grams, pieces, cents and limits depend on pieces and sets alone. Hence every choice worth no less than the best known
 * is still there with the value it had, no choice has become better, and the reductions keep one of the best.
 *
 * Pinned and left-out things let the other reductions work again: what a carried piece makes needless goes, needs become
 * equal. The model of the rest is often a third of the size and its relaxation, after the tightening, no worse.
 */
export function shrunk(
  reduced: Reduced,
  model: ChoiceModel,
  lower: Float64Array,
  upper: Float64Array,
): Reduced {
  const { problem } = reduced;
  const isFixed = (j: number | undefined, at: 0 | 1): boolean =>
    j !== undefined && j >= 0 && lower[j] === at && upper[j] === at;
  const pieces = problem.pieces.map((piece, p): Piece => {
    const j = model.pieceColumn[p];
    if (isFixed(j, 1)) return { ...piece, pin: 'always' };
    return isFixed(j, 0) ? { ...piece, pin: 'never' } : piece;
  });
  const must = new Set(problem.must);
  const needs = problem.needs.map((need, n): Need => {
    if (isFixed(model.needColumn[n], 1)) must.add(n);
    if (need.kind === 'enough') return need;
    const columns = model.wayColumn[n] ?? [];
    return { ...need, ways: need.ways.filter((_, w) => !isFixed(columns[w], 0)) };
  });
  const events = problem.events.map((event, e) => {
    const columns = model.optionColumn[e] ?? [];
    return { ...event, options: event.options.filter((_, o) => !isFixed(columns[o], 0)) };
  });
  return reduceFurther(reduced, { ...problem, pieces, needs, events, must: [...must] });
}
