import { ACCUMULATED_KM } from '@waymend/catalogue/rates/accumulated-km';
import { ALTITUDE } from '@waymend/catalogue/rates/altitude';
import { BATTERY_AGE } from '@waymend/catalogue/rates/battery-age';
import { BATTERY_PER_DAY, BATTERY_PER_FRIDGE_NIGHT } from '@waymend/catalogue/rates/battery-days';
import { CARE } from '@waymend/catalogue/rates/care';
import { COLD, WAXING } from '@waymend/catalogue/rates/cold';
import { CORRUGATION_PACE } from '@waymend/catalogue/rates/corrugation-pace';
import { CROSSINGS } from '@waymend/catalogue/rates/crossings';
import { DRIVER } from '@waymend/catalogue/rates/driver';
import { DUST, DUST_FILTER } from '@waymend/catalogue/rates/dust';
import { FUEL_QUALITY } from '@waymend/catalogue/rates/fuel-quality';
import { HEAT } from '@waymend/catalogue/rates/heat';
import { LOAD } from '@waymend/catalogue/rates/load';
import {
  ADDED_CIRCUITS,
  LARGE_TYRES,
  LIFT_ABOVE_MM,
  LIFT_KIT,
  LOCKERS_ON_ROCK,
  ROOF_OVERLOAD,
  TYRES_ABOVE_PCT,
} from '@waymend/catalogue/rates/modifications';
import { RECENT_WORK } from '@waymend/catalogue/rates/recent-work';
import { ROUGHNESS } from '@waymend/catalogue/rates/roughness';
import { STONES } from '@waymend/catalogue/rates/stones';
import { VEHICLE_AGE } from '@waymend/catalogue/rates/vehicle-age';
import type { FactorTables } from '@waymend/core/failing/rate-tables';

/** The catalogue's rate factors, as core/failing asks for them (M1). */
export const FACTOR_TABLES: FactorTables = {
  roughness: ROUGHNESS,
  accumulatedKm: ACCUMULATED_KM,
  vehicleAge: VEHICLE_AGE,
  batteryAge: BATTERY_AGE,
  care: CARE,
  recentWork: RECENT_WORK,
  load: LOAD,
  driver: DRIVER,
  corrugationPace: CORRUGATION_PACE,
  heat: HEAT,
  cold: COLD,
  altitude: ALTITUDE,
  stones: STONES,
  dust: DUST,
  liftKit: { ...LIFT_KIT, aboveMm: LIFT_ABOVE_MM },
  largeTyres: { ...LARGE_TYRES, abovePct: TYRES_ABOVE_PCT },
  lockersOnRock: LOCKERS_ON_ROCK,
  roofOverload: ROOF_OVERLOAD,
  addedCircuits: ADDED_CIRCUITS,
  added: [BATTERY_PER_DAY, BATTERY_PER_FRIDGE_NIGHT, DUST_FILTER, FUEL_QUALITY, WAXING],
  crossings: CROSSINGS,
};
