import type { Basis } from '../shape/basis.ts';
import { COMMON_PRACTICE, estimate } from '../shape/basis.ts';
import { AGEING } from './groups.ts';
import type { WordFactor } from './shape.ts';

/**
 * How the vehicle has been looked after. fresh: full inspection just done, belts and hoses renewed, every bolt checked.
 * neglected: noises ignored. Punctures and keys do not care, and a renewed battery already counts by its age.
 */
export const CARE: WordFactor<'fresh' | 'good' | 'average' | 'neglected'> = {
  groups: AGEING,
  factor: { fresh: 0.3, good: 0.6, average: 1, neglected: 2 },
  basis: estimate(
    'best truck fleets go 2 to 7 times further between roadside repairs than the average (Technology & Maintenance Council roadside benchmark)',
  ),
};

export interface RecentWorkFactor {
  /** On the group whose parts were disturbed. */
  readonly factor: number;
  /** Work counts as recent for this long, km. */
  readonly withinKm: number;
  readonly basis: Basis;
}

/** Freshly disturbed parts fail more: nuts settle, clips are left off. A shakedown drive of 200 km finds most of it. */
export const RECENT_WORK: RecentWorkFactor = { factor: 2, withinKm: 1000, basis: COMMON_PRACTICE };
