import type { Metres } from '../quantity/units.ts';
import type { RateBasis } from './rate-tables.ts';
import type { Reach } from './reach.ts';

/** One multiplier as a screen shows it. */
export interface Factor {
  /** Stable: 'age', 'load', 'stones'. */
  readonly id: string;
  readonly title: string;
  readonly factor: number;
  /** Where the figure comes from, in words, and of what kind that is. */
  readonly basis: string;
  readonly mark: RateBasis['kind'];
}

/** A share of one failure's expected events, with everything that made it. */
export interface RatePart {
  readonly kind: 'distance' | 'dust' | 'fills' | 'crossings' | 'frost' | 'days';
  /** The leg it happens on; null for what time brings, wherever the vehicle stands. */
  readonly leg: string | null;
  /** Events of the whole group before share and factors. */
  readonly base: number;
  readonly share: number;
  readonly factors: readonly Factor[];
  /** base x share x factors. */
  readonly events: number;
  /** Where the base comes from, in words. */
  readonly basis: string;
}

export interface FailureRate {
  readonly failure: string;
  readonly group: string;
  readonly title: string;
  readonly immobilises: number;
  readonly restored: number;
  readonly parts: readonly RatePart[];
  /** Expected on the whole trip. */
  readonly events: number;
  /** Of these, expected to stop the drive: events x immobilises. */
  readonly immobilising: number;
}

/** A failure's expected immobilising events where help is about equally far. */
export interface ReachRate {
  readonly failure: string;
  readonly reach: Reach;
  /** Greatest distance to help on the legs of this reach. */
  readonly help: Metres;
  readonly events: number;
  readonly immobilising: number;
}

export interface GroupTotal {
  readonly group: string;
  readonly title: string;
  readonly events: number;
  readonly immobilising: number;
}

export interface RateResult {
  /** Failures that this vehicle can have, in the order of the tables. */
  readonly failures: readonly FailureRate[];
  readonly byReach: readonly ReachRate[];
  readonly groups: readonly GroupTotal[];
  readonly events: number;
  readonly immobilising: number;
}
