import type { Basis } from '../shape/basis.ts';
import { COMMON_PRACTICE } from '../shape/basis.ts';

export interface RecentWorkFactor {
  readonly id: string;
  readonly title: string;
  /** On the group whose parts were disturbed. */
  readonly factor: number;
  /** Work counts as recent for this long, km. */
  readonly withinKm: number;
  /** A shakedown drive of this length finds most of what was left loose, km. */
  readonly shakedownKm: number;
  readonly basis: Basis;
}

/** Freshly disturbed parts fail more: nuts settle, clips are left off. */
export const RECENT_WORK: RecentWorkFactor = {
  id: 'recent-work',
  title: 'work done lately',
  factor: 2,
  withinKm: 1000,
  shakedownKm: 200,
  basis: COMMON_PRACTICE,
};
