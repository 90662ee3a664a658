import { estimate } from '../shape/basis.ts';
import type { AddedEvents, StepFactor } from './shape.ts';

/** A cold battery gives less just when a cold engine asks for more. */
export const COLD: StepFactor = {
  id: 'cold',
  title: 'cold',
  reads: 'lowest air temperature, degrees C',
  steps: [
    { upTo: -20, by: { battery: 4, 'charging-starting': 3 } },
    { upTo: -10, by: { battery: 2, 'charging-starting': 2 } },
    { upTo: Number.POSITIVE_INFINITY, by: {} },
  ],
  basis: estimate(
    'on hard-frost days a motoring club runs about twice its ordinary number of jobs; 2 to 4 by cold',
  ),
};

/** Diesel that is not of winter grade clouds and blocks the filter: each night at or below -10 degrees C. */
export const WAXING: AddedEvents = {
  id: 'waxing',
  title: 'cold nights without winter diesel',
  when: { all: ['diesel'] },
  each: 0.03,
  counts: 'cold night',
  group: 'fuel-air',
  failure: 'fuel-filter-blocked',
  basis: estimate('0.02 to 0.1 a night by how cold it is'),
};
