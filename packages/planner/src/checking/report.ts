import type { Grade } from '@waymend/core/repairing/scene';

/** What a plan says of itself, as far as it does; the checker compares. */
export interface Claims {
  /** Loss of all trouble with this kit, score units, what nothing can touch included. */
  readonly lossUnits?: number;
  /** Mass of the kit with the cases that come along. */
  readonly grams: number;
  /** Grade of each job by tools and people, null for those that cannot be done; jobs not named are not compared. */
  readonly bySceneJob?: Readonly<Record<string, Grade | null>>;
}

export interface Plan {
  /** Piece ids. */
  readonly carried: readonly string[];
  /** Piece ids bought singly. */
  readonly bought: readonly string[];
  /** Bundle ids bought, or carried whole. */
  readonly bundles: readonly string[];
}

export type ViolationId =
  | 'piece-unknown'
  | 'piece-twice'
  | 'bundle-unknown'
  | 'bundle-twice'
  | 'not-at-hand'
  | 'not-for-sale'
  | 'bought-owned'
  | 'bought-left-home'
  | 'bundle-bought-for-nothing'
  | 'bundle-split'
  | 'over-mass'
  | 'over-volume'
  | 'over-budget'
  | 'over-berth'
  | 'over-load'
  | 'pinned-left-home'
  | 'pinned-carried'
  | 'floor-unmet'
  | 'must-do-unmet'
  | 'mass-claim'
  | 'loss-understated'
  | 'loss-overstated'
  | 'job-claim';

export interface Violation {
  readonly id: ViolationId;
  /** One plain sentence. */
  readonly sentence: string;
  /** What it is about: piece, bundle, berth, load row, job or function. */
  readonly about: string;
  /** Two numbers that do not agree, or a sum and its limit, in the unit the sentence names. */
  readonly found?: number;
  readonly expected?: number;
}

/** A sum against its limit; whole units of the row (grams, millilitres, cents). */
export interface LimitFigure {
  readonly id: string;
  readonly used: number;
  readonly limit: number | null;
}

export interface JobFigure {
  readonly id: string;
  /** By tools and people. */
  readonly grade: Grade | null;
  /** How many times the stock aboard allows it; Infinity when it uses up nothing. */
  readonly times: number;
}

export interface TroubleFigure {
  readonly id: string;
  readonly loss: number;
  readonly gain: number;
  /** The job that counts, null when nothing is gained. */
  readonly job: string | null;
  /** Chance that it restores the vehicle, stock counted by the bound. */
  readonly chance: number;
}

/** The checker's own figures, none of them taken from the plan. */
export interface CheckFigures {
  readonly grams: number;
  readonly millilitres: number;
  readonly cents: number;
  /** Score units: all trouble together with this kit, and with nothing. */
  readonly lossUnits: number;
  readonly lossUnitsBare: number;
  /** Unaided chance by M5 (a lower bound where several troubles share a stock), without rounding to score units. */
  readonly chance: number;
  /** The same with shared stock counted out exactly. Never below `chance` when each job takes one unit at a time. */
  readonly chanceExactStock: number;
  readonly limits: readonly LimitFigure[];
  readonly jobs: readonly JobFigure[];
  readonly trouble: readonly TroubleFigure[];
}

export interface CheckReport {
  readonly ok: boolean;
  readonly violations: readonly Violation[];
  /** Floor functions that nothing owned or affordable gives (M7): gaps to report, no fault of the plan. */
  readonly floorGaps: readonly string[];
  readonly figures: CheckFigures;
}
