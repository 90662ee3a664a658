import { estimate } from '../shape/basis.ts';
import { DRIVEN } from './groups.ts';
import type { WordFactor } from './shape.ts';

/** The cheapest spare part is a gentle right foot. Batteries, fuel and keys do not feel it. */
export const DRIVER: WordFactor<'gentle' | 'average' | 'hard'> = {
  groups: DRIVEN,
  factor: { gentle: 0.5, average: 1, hard: 2 },
  basis: estimate('common practice puts a careful driver at half, a hard one at twice'),
};
