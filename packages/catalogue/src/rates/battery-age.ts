import { estimate } from '../shape/basis.ts';
import type { StepFactor } from './shape.ts';

/** Batteries fail late: few calls in the first three years, most in the fifth to seventh. */
export const BATTERY_AGE: StepFactor = {
  id: 'battery-age',
  title: 'battery age',
  reads: 'battery age, years',
  steps: [
    { upTo: 3, by: { battery: 0.3 } },
    { upTo: 4, by: { battery: 0.6 } },
    { upTo: 5, by: { battery: 1 } },
    { upTo: 6, by: { battery: 2 } },
    { upTo: Number.POSITIVE_INFINITY, by: { battery: 3 } },
  ],
  basis: estimate('motoring clubs report that battery calls cluster in years 5 to 7; the steps are ours'),
};
