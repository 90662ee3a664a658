import { estimate } from '../shape/basis.ts';
import type { FlagFactor } from './shape.ts';

/** Long hours at 20 to 45 km/h on corrugations, where the wheels ring, and no stops for the shocks to cool. */
export const CORRUGATION_PACE: FlagFactor = {
  id: 'corrugation-pace',
  title: 'pace on corrugations',
  by: { suspension: 1.5 },
  onPart: { part: 'shock absorbers', factor: 2.5, shareOfGroup: 1 / 3 },
  basis: estimate(
    '2 to 3 times on shock absorbers by common practice; taken as a third of suspension trouble',
  ),
};
