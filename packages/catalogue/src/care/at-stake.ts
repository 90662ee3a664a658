import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';

/** What a neglected care rule puts at stake: the chance that the thing fails when it is wanted. */
export const AT_STAKE = {
  /** Known not to work: flat, lent, past its date for something that sets or seals. */
  useless: 1,
  expiry: 0.6,
  charge: 0.5,
  replace: 0.15,
  pressure: 0.15,
  service: 0.08,
  calibration: 0.05,
  check: 0.05,
  storage: 0.05,
} as const;

export const AT_STAKE_BASIS: Basis = estimate(
  'How often a thing fails when it is wanted after its care was left undone: a ranking by trade judgement, no source',
);

/** Days after coming home in which a kit is restocked, washed and charged (common practice). */
export const RESTOCK_DAYS = 7;
/** A look before leaving counts when it was taken this many days before, or later (estimate). */
export const FRESH_DAYS = 14;
