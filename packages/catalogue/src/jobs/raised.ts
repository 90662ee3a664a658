import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { JobNeed } from '../shape/job.ts';

/** What nearly every job's numbers lean on. */
export const TRADE: Basis = estimate(
  'The method is common practice of the trade; minutes, skill and trust are judged, not measured',
);

/** Caution of every job that takes weight off a wheel. */
export const OFF_A_WHEEL =
  'A jack lifts, it does not hold. Firm base, wheels chocked both ways, and a stand or crossed timber as support before any hand or foot goes where the vehicle could drop.';

/** Caution of every job that puts a person below the raised vehicle. */
export const UNDER_IT =
  'Nobody goes under until stands or crossed timber carry the weight and the vehicle has been rocked to prove it. No jack, single block, brick or stone is a support.';

/** Caution of jobs underneath with the wheels on the ground. */
export const UNDER_ON_WHEELS =
  'Chock the wheels both ways and take the key out before lying underneath. If anything has to be raised, stands or crossed timber are the only support.';

/**
 * Raising for an expedient, which says it itself. Amounts kg: 60 % of an 1,800 kg axle, rounded up; the proper job asks
 * for 60 % of this vehicle's own heavier axle.
 */
export const RAISE_A_WHEEL: readonly JobNeed[] = [
  { fn: 'chock' },
  { fn: 'base' },
  { fn: 'lift', amount: 1100 },
];
export const RAISE_AND_SUPPORT: readonly JobNeed[] = [
  ...RAISE_A_WHEEL,
  { fn: 'support', amount: 1100, safety: true },
];
