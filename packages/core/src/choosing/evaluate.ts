import { compile } from './compile.ts';
import { KitState } from './kit-state.ts';
import type { Choice, Problem } from './problem.ts';

/** Everything there is to say about a choice, in whole numbers. */
export interface Evaluation {
  /** Nothing in `faults`. */
  readonly feasible: boolean;
  readonly faults: readonly Fault[];
  readonly loss: number;
  /** Carried pieces, and the cases of sets carried whole. */
  readonly grams: number;
  readonly millilitres: number;
  readonly pieces: number;
  /** Price of what is bought. */
  readonly cents: number;
  readonly limits: readonly { readonly id: string; readonly used: number; readonly limit: number }[];
  /** 1 where met, by need. */
  readonly needsMet: Uint8Array;
  /** Per event, the complete option of highest gain (first among equals), or -1. */
  readonly bestOption: Int32Array;
}

export type Fault =
  | { readonly kind: 'over-limit'; readonly limit: string; readonly by: number }
  | { readonly kind: 'must-open'; readonly need: number }
  | { readonly kind: 'pin'; readonly piece: number }
  /** Carried, but neither owned nor bought nor in a set that comes. */
  | { readonly kind: 'not-had'; readonly piece: number }
  | { readonly kind: 'not-sold-singly'; readonly piece: number }
  /** A set carried whole without this member. */
  | { readonly kind: 'torn-set'; readonly bundle: number; readonly piece: number };

/**
 * Recomputes a choice from the problem's definition alone, in exact integer arithmetic; shares nothing with the linear
 * model, whose answers it checks. `compiled` saves the preparation when many choices are recounted. A piece of an owned set that is carried whole comes only with its set.
 */
export function evaluate(problem: Problem, choice: Choice, compiled = compile(problem)): Evaluation {
  const state = new KitState(compiled);
  for (const p of choice.carried) state.carry(p);
  const bought = new Set(choice.bought);
  const chosen = new Set(choice.bundles);
  const faults: Fault[] = [];
  let grams = state.grams;
  let millilitres = 0;
  let cents = 0;

  problem.pieces.forEach((piece, p) => {
    const carried = state.carried[p] === 1;
    if (carried) millilitres += piece.millilitres;
    if (piece.pin && (piece.pin === 'always') !== carried) faults.push({ kind: 'pin', piece: p });
    const bundles = piece.bundles ?? [];
    if (bought.has(p)) {
      if (piece.cents === null || piece.owned) faults.push({ kind: 'not-sold-singly', piece: p });
      cents += piece.cents ?? 0;
    }
    const boxed = bundles.some((b) => problem.bundles[b]?.owned && problem.bundles[b].carry === 'whole');
    const had = (piece.owned ? !boxed : bought.has(p)) || bundles.some((b) => chosen.has(b));
    if (carried && !had) faults.push({ kind: 'not-had', piece: p });
    for (const b of bundles) {
      if (!carried && chosen.has(b) && problem.bundles[b]?.carry === 'whole') {
        faults.push({ kind: 'torn-set', bundle: b, piece: p });
      }
    }
  });
  for (const b of chosen) {
    const bundle = problem.bundles[b];
    if (!bundle) throw new Error(`bundle ${b} does not exist`);
    if (!bundle.owned) cents += bundle.cents;
    if (bundle.carry === 'whole') {
      grams += bundle.caseGrams;
      millilitres += bundle.caseMillilitres;
    }
  }

  const limits = problem.limits.map((row) => {
    let used = 0;
    for (const { piece, weight } of row.carried) if (state.carried[piece] === 1) used += weight;
    for (const { piece, weight } of row.bought ?? []) if (bought.has(piece)) used += weight;
    for (const { bundle, weight } of row.bundles ?? []) if (chosen.has(bundle)) used += weight;
    if (used > row.limit) faults.push({ kind: 'over-limit', limit: row.id, by: used - row.limit });
    return { id: row.id, used, limit: row.limit };
  });

  const needsMet = Uint8Array.from(problem.needs, (_, n) => (state.needMet(n) ? 1 : 0));
  for (const need of new Set(problem.must)) {
    if (needsMet[need] !== 1) faults.push({ kind: 'must-open', need });
  }
  return {
    feasible: faults.length === 0,
    faults,
    loss: state.loss,
    grams,
    millilitres,
    pieces: state.pieces,
    cents,
    limits,
    needsMet,
    bestOption: bestOptions(problem, state),
  };
}

function bestOptions(problem: Problem, state: KitState): Int32Array {
  let first = 0;
  return Int32Array.from(problem.events, (event) => {
    let best = -1;
    event.options.forEach((option, i) => {
      if (!state.optionComplete(first + i) || option.gain <= 0) return;
      if (best < 0 || option.gain > (event.options[best]?.gain ?? 0)) best = i;
    });
    first += event.options.length;
    return best;
  });
}
