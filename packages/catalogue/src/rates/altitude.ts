import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { StepFactor } from './shape.ts';

/** Thin air cools less, and coolant under a weak cap boils sooner. */
export const ALTITUDE: StepFactor = {
  id: 'altitude',
  title: 'altitude',
  reads: 'height above the sea, m',
  steps: [
    { upTo: 3000, by: {} },
    { upTo: Number.POSITIVE_INFINITY, by: { cooling: 1.3 } },
  ],
  basis: COMMON_PRACTICE,
};
