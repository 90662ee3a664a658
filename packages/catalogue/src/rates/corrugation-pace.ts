import { estimate } from '../shape/basis.ts';
import type { FlatFactor } from './shape.ts';
import { spread } from './shape.ts';

/**
 * Long hours at 20 to 45 km/h on corrugations, where the wheels ring, and no stops for the shocks to cool: two to three
 * times on the shock absorbers.
 */
export const CORRUGATION_PACE: FlatFactor = {
  groups: ['suspension'],
  factor: spread(2.5, 1 / 3),
  basis: estimate(
    '2 to 3 times on shock absorbers by common practice; taken as a third of suspension trouble',
  ),
};
