import type { Place } from '../shape/place.ts';
import { BRAKE_PLACES } from './brakes.ts';
import { DRIVELINE_PLACES } from './driveline.ts';
import { SUSPENSION_PLACES } from './suspension-steering.ts';
import { WHEEL_PLACES } from './wheels-tyres.ts';

/** Places of everything between body and road. */
export const CHASSIS_PLACES: readonly Place[] = [
  ...WHEEL_PLACES,
  ...BRAKE_PLACES,
  ...DRIVELINE_PLACES,
  ...SUSPENSION_PLACES,
];
