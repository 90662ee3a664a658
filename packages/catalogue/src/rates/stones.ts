import { estimate } from '../shape/basis.ts';
import type { WordFactor } from './shape.ts';

/** Plain gravel is in the surfaces' own rates; sharp stone and the stakes of scrub are not. */
export const STONES: WordFactor<'none' | 'gravel' | 'sharp' | 'staked'> = {
  groups: ['tyre'],
  factor: { none: 1, gravel: 1, sharp: 2.5, staked: 3.5 },
  basis: estimate("2 to 4 times on stony or staked tracks, from travellers' puncture logs"),
};
