import { estimate } from '../shape/basis.ts';
import { DRIVEN } from './groups.ts';
import type { WordFactor } from './shape.ts';
import { onGroups } from './shape.ts';

/** The cheapest spare part is the right foot. Batteries, fuel and keys do not feel it. */
export const DRIVER: WordFactor<'gentle' | 'average' | 'hard'> = {
  id: 'driver',
  title: 'driving',
  words: { gentle: onGroups(DRIVEN, 0.5), average: {}, hard: onGroups(DRIVEN, 2) },
  basis: estimate('common practice puts a careful driver at half, a hard one at twice'),
};
