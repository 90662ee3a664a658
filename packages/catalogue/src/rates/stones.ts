import { estimate } from '../shape/basis.ts';
import type { WordFactor } from './shape.ts';

/** Plain gravel is in the surfaces' own rates; sharp stone and the stakes of scrub are not. */
export const STONES: WordFactor<'none' | 'gravel' | 'sharp' | 'staked'> = {
  id: 'stones',
  title: 'stones',
  words: { none: {}, gravel: {}, sharp: { tyre: 2.5 }, staked: { tyre: 3.5 } },
  basis: estimate('2 to 4 times on stony or staked tracks, from travellers puncture logs'),
};
