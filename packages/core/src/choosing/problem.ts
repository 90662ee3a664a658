/**
 * The choosing problem (M6), free of any trade words: pieces that may come along, needs that pieces meet in one way or
 * another, events that met needs put right, and limits. It is monotone: one more piece never meets fewer needs.
 * Written out as documented JSON by `waymend plan --problem` (docs/problem.md) so that anybody can check an answer.
 */

/** Index into `Problem.pieces`. One entry per copy. */
export type PieceIndex = number;
/** Index into `Problem.needs`. A need refers only to needs of smaller index, so there are no loops. */
export type NeedIndex = number;

/** One copy of a belonging, owned or on offer. */
export interface Piece {
  readonly id: string;
  /** Whole grams, millilitres. */
  readonly grams: number;
  readonly millilitres: number;
  /** Whole cents to buy this piece on its own; 0 when owned; null when it is not sold singly. */
  readonly cents: number | null;
  /** `always` and `never` are the owner's pins (M7). */
  readonly pin?: 'always' | 'never';
  /** Bundles (by index) that bring this piece, when it is neither owned nor sold singly, or also sold in a set. */
  readonly bundles?: readonly number[];
  /** Owned pieces need no purchase. */
  readonly owned: boolean;
}

/** A set sold, or carried, as one. */
export interface Bundle {
  readonly id: string;
  /** Whole cents for the whole set; 0 when owned. */
  readonly cents: number;
  /** Grams and millilitres of the case, carried when `whole`. */
  readonly caseGrams: number;
  readonly caseMillilitres: number;
  /** Whole: every member comes or none. Loose: members may be left at home. */
  readonly carry: 'whole' | 'loose';
  readonly owned: boolean;
}

/** One way of meeting a need: all of these pieces and all of these (smaller) needs at once. */
export interface Way {
  readonly pieces: readonly PieceIndex[];
  readonly needs: readonly NeedIndex[];
}

export type Need =
  /** Met when any one of the ways is complete. No ways: cannot be met. A way with nothing in it: always met. */
  | { readonly kind: 'any'; readonly ways: readonly Way[] }
  /** Met when the carried pieces' units add up to `units` (litres, jobs' worth, straps used at once). */
  | {
      readonly kind: 'enough';
      readonly units: number;
      readonly from: readonly { readonly piece: PieceIndex; readonly units: number }[];
    };

/** One option against an event: when all its needs are met, the event's loss falls by `gain`. */
export interface Option {
  readonly needs: readonly NeedIndex[];
  /** Whole score units (SCORE_UNIT nepers) taken off the loss; the best complete option counts (M5). */
  readonly gain: number;
  /** For explanations: which job at which grade this is. Opaque here. */
  readonly label: string;
}

/** One kind of trouble: its loss if nothing can be done, and what can be done. */
export interface TroubleEvent {
  readonly id: string;
  /** Whole score units: expected immobilising events of this kind, in SCORE_UNIT. */
  readonly loss: number;
  readonly options: readonly Option[];
}

/** A row `sum(weights) <= limit`: mass, volume, money, a berth, an axle. Whole numbers. */
export interface LimitRow {
  readonly id: string;
  readonly limit: number;
  /** Weight per piece carried, by piece index; missing means 0. May be negative (a load behind the rear axle lifts the front). */
  readonly carried: readonly { readonly piece: PieceIndex; readonly weight: number }[];
  /** Weight per piece bought singly, and per bundle bought (money) or carried whole (case). */
  readonly bought?: readonly { readonly piece: PieceIndex; readonly weight: number }[];
  readonly bundles?: readonly { readonly bundle: number; readonly weight: number }[];
}

export interface Problem {
  readonly pieces: readonly Piece[];
  readonly bundles: readonly Bundle[];
  readonly needs: readonly Need[];
  readonly events: readonly TroubleEvent[];
  readonly limits: readonly LimitRow[];
  /** Needs that must be met whatever the score says (M7 floor, and must-do jobs). */
  readonly must: readonly NeedIndex[];
  /** Score units lost for good: events no option can touch. Part of the total, not of the choice. */
  readonly fixedLoss: number;
}

/**
 * One score unit in nepers: losses are whole multiples of this, so that sums, ties and proofs are exact. 1e-5 of a neper is
 * one failure in a hundred thousand trips, far below what any rate is known to; a finer grain only makes the proof longer
 * (docs/design/quantities.md).
 */
export const SCORE_UNIT = 1e-5;

/** What to look for. */
export type Aim =
  /** Least loss within the limits; ties: lighter, then fewer pieces. */
  | { readonly kind: 'best-chance' }
  /** Least mass with at most this loss (score units). */
  | { readonly kind: 'least-mass'; readonly maxLoss: number }
  /** Least mass that meets `must`; the score is not looked at. */
  | { readonly kind: 'must-do' };

/** A choice: which pieces come, which are bought singly, which bundles are bought or carried. Indices, ascending. */
export interface Choice {
  readonly carried: readonly PieceIndex[];
  readonly bought: readonly PieceIndex[];
  readonly bundles: readonly number[];
}

export type Outcome =
  | { readonly kind: 'proven'; readonly choice: Choice; readonly loss: number; readonly grams: number }
  /** Stopped early: `bound` is a certified lower bound on the loss (or grams, for the mass aims). */
  | {
      readonly kind: 'within';
      readonly choice: Choice;
      readonly loss: number;
      readonly grams: number;
      readonly bound: number;
      readonly stoppedBy: 'time' | 'cancel' | 'rounding';
    }
  /**
   * Nothing satisfies the limits: which clash, and by how much each would have to give if it alone gave way ('max-loss' is
   * the greatest loss of a least-mass aim). Where no limit is to blame: needs nothing on the table meets, pieces pinned to
   * come that cannot be had.
   */
  | {
      readonly kind: 'no-plan';
      readonly clashes: readonly { readonly limit: string; readonly shortBy: number }[];
      readonly unmeetable?: readonly NeedIndex[];
      readonly unobtainable?: readonly PieceIndex[];
    }
  | { readonly kind: 'failed'; readonly cause: string };
