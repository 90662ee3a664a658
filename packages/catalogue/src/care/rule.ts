import type { Basis } from '../shape/basis.ts';

export type CareLook = 'charge' | 'service' | 'pressure' | 'calibration' | 'check';

/** A habit that keeps belongings ready. Belongings name the rules that apply to them; kit rules apply to the whole. */
export interface CareRule {
  readonly id: string;
  readonly title: string;
  readonly applies: 'belonging' | 'kit';
  /** Look at it this often. */
  readonly everyMonths?: number;
  /** Look at it around every trip. */
  readonly everyTrip?: 'before' | 'after';
  readonly afterEveryJob?: true;
  /** Years it keeps, the shorter end planned for: sealed as bought, and once opened. */
  readonly shelfYears?: { readonly sealed: readonly [number, number]; readonly openedYears?: number };
  /** Replace when this old, years from and to. */
  readonly replaceYears?: readonly [number, number];
  readonly storage?: {
    readonly maxC?: number;
    /** State of charge to store at, percent. */
    readonly chargePct?: readonly [number, number];
    /** Charge to leave home with, percent. */
    readonly leaveAtPct?: number;
    readonly dry?: true;
    readonly dark?: true;
    readonly upright?: true;
  };
  /** What the regular look is: default 'check'. */
  readonly look?: CareLook;
  /** Seeing to it makes it new: its age counts from then. */
  readonly renews?: true;
  readonly text: string;
  /** Minutes it takes one person (estimate), and what is needed besides hands. */
  readonly minutes: number;
  readonly takes?: readonly string[];
  readonly basis: Basis;
}
