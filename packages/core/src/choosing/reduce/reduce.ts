import type { Aim, Choice, Problem } from '../problem.ts';
import { draftOf, forgetUnasked } from './draft.ts';
import type { Atom, Draft } from './draft.ts';
import { writeEnoughAsWays } from './enough-as-ways.ts';
import { mergeEqualEvents } from './equal-events.ts';
import { mergeEqualNeed } from './equal-needs.ts';
import { finish } from './finish.ts';
import { takeForced } from './forced.ts';
import { leaveIdlePieces } from './idle-pieces.ts';
import { Implications } from './implied.ts';
import { dropDominatedPieces } from './lighter-piece.ts';
import { dropIdleAlternatives } from './idle-alternatives.ts';
import { keepMinimalWays } from './minimal-ways.ts';
import { simplifyOptions } from './options.ts';
import type { OrderedPair } from './ordered-pieces.ts';
import { dropUnobtainable, settlePins } from './pins.ts';
import { keepPossibleWays } from './possible-ways.ts';
import { foldSinglePurchases } from './single-purchases.ts';
import { dropSecondChoices } from './second-choices.ts';
import { contractSingleWay } from './single-way.ts';
import { dropSlackLimits } from './slack-limits.ts';
import { dropTooHeavy } from './too-heavy.ts';
import { mergeWholeSets } from './whole-sets.ts';

/** A smaller problem with the same best loss, grams, pieces and cents, and the way back. */
export interface Reduced {
  readonly problem: Problem;
  /** By piece of `problem`: belongings it stands for, and cents paid when it is carried. */
  readonly counts: Float64Array;
  readonly cents: Float64Array;
  /** Rows that may be added without losing every optimum. */
  readonly ordered: readonly OrderedPair[];
  /** What settled pieces already weigh, number and cost. */
  readonly settled: { readonly grams: number; readonly pieces: number; readonly cents: number };
  /** Shown to have no solution already. */
  readonly impossible: boolean;
  /** The raw choice that a choice of `problem` stands for. */
  readonly lift: (choice: Choice) => Choice;
}

/** More rounds than this have never been needed; the count only guards against a slip. */
const MOST_ROUNDS = 50;

/** Changes in one round. */
const FEW_CHANGES = 20;

/**
 * Applies every reduction to a fixed point. Each keeps at least one optimum of every lexicographic order of loss, grams,
 * pieces and cents (docs/design/reductions.md); none looks at limits that the aim might relax later.
 */
export function reduce(problem: Problem, aim: Aim): Reduced {
  return reduced(draftOf(problem, aim));
}

/**
 * Reduces once more what a reduced problem has become: `problem` is `before.problem` with some pieces pinned, needs made
 * musts, ways and options left out. Counts go on from `before`, and choices are lifted to it, not to the raw problem.
 */
export function reduceFurther(before: Reduced, problem: Problem): Reduced {
  const { settled, ...rest } = reduced(draftOf(problem, { kind: 'best-chance' }, before));
  return {
    ...rest,
    settled: {
      grams: before.settled.grams + settled.grams,
      pieces: before.settled.pieces + settled.pieces,
      cents: before.settled.cents + settled.cents,
    },
  };
}

function reduced(draft: Draft): Reduced {
  settlePins(draft);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = draft.changes;
    mergeWholeSets(draft);
    foldSinglePurchases(draft);
    dropUnobtainable(draft);
    const implications = rewriteNeeds(draft);
    takeForced(draft, implications);
    simplifyOptions(draft, implications);
    mergeEqualEvents(draft);
    dropSlackLimits(draft);
    dropTooHeavy(draft);
    // The costly ones only when the cheap ones have little left to do.
    if (draft.changes - before > FEW_CHANGES) continue;
    leaveIdlePieces(draft);
    dropDominatedPieces(draft);
    dropSecondChoices(draft);
    if (draft.changes === before) break;
  }
  return finish(draft);
}

/** Returns what the rewritten needs imply of each other. */
function rewriteNeeds(draft: Draft): Implications {
  const must = new Set<Atom>(draft.must);
  const seen = new Map<string, Atom>();
  const implications = new Implications(draft.pieceCount, draft.needs);
  forgetUnasked(draft);
  // `order` grows in front of the need in hand, by needs that are already in their final form.
  for (const n of [...draft.order]) {
    if (!keepPossibleWays(draft, n, must)) continue;
    writeEnoughAsWays(draft, n);
    const need = draft.needs[n];
    if (!need) continue;
    keepMinimalWays(need, implications);
    dropIdleAlternatives(draft, n, seen, implications);
    if (!contractSingleWay(draft, n)) mergeEqualNeed(draft, n, seen);
  }
  return implications;
}

/** The problem as it is, in the same wrapping: for checks of the reductions themselves. */
export function unreduced(problem: Problem): Reduced {
  return {
    problem,
    counts: new Float64Array(problem.pieces.length).fill(1),
    cents: new Float64Array(problem.pieces.length),
    ordered: [],
    settled: { grams: 0, pieces: 0, cents: 0 },
    impossible: false,
    lift: (choice) => choice,
  };
}
