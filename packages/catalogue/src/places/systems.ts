import type { Place } from '../shape/place.ts';
import { BODY_TRAILER_PLACES } from './body-trailer.ts';
import { COOLING_PLACES } from './cooling.ts';
import { ELECTRICAL_PLACES } from './electrical.ts';
import { ENGINE_GEARBOX_PLACES } from './engine-gearbox.ts';
import { FUEL_AIR_PLACES } from './fuel-air.ts';

/** Places of the engine bay, the body and the trailer. */
export const SYSTEM_PLACES: readonly Place[] = [
  ...COOLING_PLACES,
  ...FUEL_AIR_PLACES,
  ...ELECTRICAL_PLACES,
  ...ENGINE_GEARBOX_PLACES,
  ...BODY_TRAILER_PLACES,
];
