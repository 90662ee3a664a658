import { estimate } from '../shape/basis.ts';
import { AGEING } from './groups.ts';
import type { WordFactor } from './shape.ts';
import { onGroups } from './shape.ts';

/**
 * How the vehicle has been looked after. Punctures and keys do not care, and a renewed battery already counts by its age.
 * fresh: full inspection just done, belts and hoses renewed, every bolt checked. neglected: noises ignored.
 */
export const CARE: WordFactor<'fresh' | 'good' | 'average' | 'neglected'> = {
  id: 'care',
  title: 'care',
  words: {
    fresh: onGroups(AGEING, 0.3),
    good: onGroups(AGEING, 0.6),
    average: {},
    neglected: onGroups(AGEING, 2),
  },
  basis: estimate(
    'best truck fleets go 2 to 7 times further between roadside repairs than the average (Technology & Maintenance Council roadside benchmark)',
  ),
};
