import { compile } from './compile.ts';
import { evaluate } from './evaluate.ts';
import type { Evaluation } from './evaluate.ts';
import { KitState } from './kit-state.ts';
import type { Aim, Choice, Problem } from './problem.ts';

/** The aims' order of what matters, as numbers to compare from left to right. */
export function criteria(
  aim: Aim,
  { loss, grams, pieces, cents }: Pick<Evaluation, 'loss' | 'grams' | 'pieces' | 'cents'>,
): readonly number[] {
  switch (aim.kind) {
    case 'best-chance':
      return [loss, grams, pieces, cents];
    case 'least-mass':
      return [grams, loss, pieces, cents];
    case 'must-do':
      return [grams, pieces, cents];
  }
}

/** Lexicographic: the first difference decides. */
export function isBefore(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

/**
 * Tries every subset of the pieces and sets (up to about 16 together) and returns a best one, or null when none is
 * feasible. For tests of everything else: no reduction, no model, no solver. Subsets come in Gray-code order, so that each
 * differs from the last by one piece.
 */
export function bruteForce(
  problem: Problem,
  aim: Aim,
): { readonly choice: Choice; readonly evaluation: Evaluation } | null {
  const { pieces, bundles } = problem;
  if (pieces.length + bundles.length > 22) throw new Error('too many pieces to try every subset');
  let best: { choice: Choice; evaluation: Evaluation; rank: readonly number[] } | null = null;
  const compiled = compile(problem);
  for (let sets = 0; sets < 1 << bundles.length; sets++) {
    const chosen = bundles.map((_, b) => b).filter((b) => (sets >> b) & 1);
    const caseGrams = chosen.reduce(
      (sum, b) => sum + (bundles[b]?.carry === 'whole' ? bundles[b].caseGrams : 0),
      0,
    );
    const state = new KitState(compiled);
    for (let step = 0; step < 1 << pieces.length; step++) {
      // From one Gray code to the next the bit that changes is the lowest set bit of the count.
      const toggled = step === 0 ? -1 : 31 - Math.clz32(step & -step);
      if (toggled >= 0) {
        if (state.carried[toggled] === 1) state.leave(toggled);
        else state.carry(toggled);
      }
      if (state.mustOpen > 0 || (aim.kind === 'least-mass' && state.loss > aim.maxLoss)) continue;
      // The full recount, limits and purchases included, only for what would be better.
      const hopeful = criteria(aim, {
        loss: state.loss,
        grams: state.grams + caseGrams,
        pieces: state.pieces,
        cents: -1,
      });
      if (best && !isBefore(hopeful, best.rank)) continue;
      const choice = choiceWith(problem, state, chosen);
      const evaluation = evaluate(problem, choice);
      if (!evaluation.feasible) continue;
      const rank = criteria(aim, evaluation);
      if (!best || isBefore(rank, best.rank)) best = { choice, evaluation, rank };
    }
  }
  return best;
}

function choiceWith(problem: Problem, state: KitState, bundles: readonly number[]): Choice {
  const carried = problem.pieces.map((_, p) => p).filter((p) => state.carried[p] === 1);
  const bought = carried.filter((p) => {
    const piece = problem.pieces[p];
    return !piece?.owned && piece?.cents !== null && !(piece?.bundles ?? []).some((b) => bundles.includes(b));
  });
  return { carried, bought, bundles };
}
