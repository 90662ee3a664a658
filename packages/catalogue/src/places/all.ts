import type { Place } from '../shape/place.ts';
import { CHASSIS_PLACES } from './chassis.ts';
import { SYSTEM_PLACES } from './systems.ts';

/** Every place in the catalogue, one record each. */
export const PLACES: readonly Place[] = [...CHASSIS_PLACES, ...SYSTEM_PLACES];
