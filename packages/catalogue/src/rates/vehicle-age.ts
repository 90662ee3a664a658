import { source } from '../shape/basis.ts';
import { AGEING } from './groups.ts';
import type { AgeFactor } from './shape.ts';

/** Five per cent a year, from half the trouble when new to half as much again at twenty years. */
export const VEHICLE_AGE: AgeFactor = {
  groups: AGEING,
  perYear: 0.05,
  referenceYears: 10,
  least: 0.5,
  most: 1.5,
  basis: source(
    'RAND MR-1789: failures of army vehicles rise 3 to 7 % a year of age; 5 % and the limits are ours',
  ),
};
