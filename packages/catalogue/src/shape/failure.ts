import type { Basis } from './basis.ts';
import type { Condition, GroupId, Surface } from './words.ts';

/** A failure group: how often, how sure, how bad. Rates are events per 10,000 km as printed in the trade's tables. */
export interface FailureGroup {
  readonly id: GroupId;
  readonly title: string;
  readonly per10000km: Readonly<Record<Surface, number>>;
  /** The true value lies between rate/f and rate*f with 90 % belief. */
  readonly factor90: number;
  readonly gammaShape: number;
  /** P(the event stops the drive). */
  readonly immobilises: number;
  /** P(restored, at least a limp | full kit, parts, skill 3). */
  readonly restored: number;
  readonly basis: Basis;
}

/** One failure of a group. Shares of a group's failures that apply to a vehicle are scaled to sum to 1. */
export interface Failure {
  readonly id: string;
  readonly group: GroupId;
  readonly title: string;
  /** Relative weight in its group, before features are looked at. 0: only what is added for it (nights of frost), no distance. */
  readonly share: number;
  readonly when?: Condition;
  /** Overrides the group's value. */
  readonly immobilises?: number;
  /** Overrides the group's value. */
  readonly restored?: number;
  /** Jobs that put it right, best first. Empty: nothing at the roadside does. */
  readonly jobs: readonly string[];
  /** Renewing or checking this at home before leaving: rate factor afterwards, and what to do. */
  readonly renew?: {
    readonly what: string;
    readonly rateFactor: number;
    readonly price: 'P1' | 'P2' | 'P3' | 'P4' | 'P5' | 'P6';
  };
  readonly basis: Basis;
}
