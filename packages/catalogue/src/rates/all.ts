import { ACCUMULATED_KM } from './accumulated-km.ts';
import { BATTERY_AGE, BATTERY_DAYS } from './battery.ts';
import { CARE, RECENT_WORK } from './care.ts';
import { CORRUGATION_PACE } from './corrugation-pace.ts';
import { CROSSINGS } from './crossings.ts';
import { DRIVER } from './driver.ts';
import { DUST, DUST_EVENTS, FILL_EVENTS } from './dust-and-fuel.ts';
import { LOAD } from './load.ts';
import { ADDED_CIRCUITS, MODIFICATIONS } from './modifications.ts';
import { ROUGHNESS } from './roughness.ts';
import { STONES } from './stones.ts';
import { VEHICLE_AGE } from './vehicle-age.ts';
import { ALTITUDE, COLD, HEAT, WAXING } from './weather.ts';

/** Every rate factor, in the shape core/failing asks for. */
export const RATE_FACTORS = {
  roughness: ROUGHNESS,
  distance: ACCUMULATED_KM,
  age: VEHICLE_AGE,
  batteryAge: BATTERY_AGE,
  care: CARE,
  recentWork: RECENT_WORK,
  load: LOAD,
  pace: CORRUGATION_PACE,
  heat: HEAT,
  cold: COLD,
  waxing: WAXING,
  altitude: ALTITUDE,
  stones: STONES,
  dust: DUST,
  dustEvents: DUST_EVENTS,
  fillEvents: FILL_EVENTS,
  circuits: ADDED_CIRCUITS,
  modifications: MODIFICATIONS,
  driver: DRIVER,
  perDay: BATTERY_DAYS,
  crossing: CROSSINGS,
};
