import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { StepFactor } from './shape.ts';

/**
 * Hot air cools less, hot tyres carry less, and a battery that has been hot is weak. A battery's life halves with about
 * every 10 degrees, but over years; the little that one trip adds is in the step.
 */
export const HEAT: StepFactor = {
  id: 'heat',
  title: 'heat',
  reads: 'highest air temperature, degrees C',
  steps: [
    { upTo: 35, by: {} },
    { upTo: Number.POSITIVE_INFINITY, by: { cooling: 1.5, tyre: 1.5, battery: 1.2 } },
  ],
  basis: COMMON_PRACTICE,
};
