import type { Job } from '../shape/job.ts';
import { AIR_AND_WATER_JOBS } from './air-and-water.ts';
import { BELT_AND_FAN_JOBS } from './belts-and-fans.ts';
import { BODY_TRAILER_JOBS } from './body-trailer.ts';
import { CLUTCH_GEARBOX_JOBS } from './clutch-gearbox.ts';
import { COOLING_JOBS } from './cooling.ts';
import { ENGINE_OIL_JOBS } from './engine-oil.ts';
import { EXHAUST_JOBS } from './exhaust.ts';
import { FUEL_JOBS } from './fuel-air.ts';
import { IGNITION_MANAGEMENT_JOBS } from './ignition-management.ts';
import { KEYS_GLASS_JOBS } from './keys-glass.ts';
import { STARTING_CHARGING_JOBS } from './starting-charging.ts';
import { WIRING_JOBS } from './wiring.ts';

/**
 * Jobs of the engine bay, the body, the trailer, keys and glass. A letter after the number (CO-08B) is another trouble or
 * another way that the same heading covers, with needs of its own.
 */
export const SYSTEM_JOBS: readonly Job[] = [
  ...COOLING_JOBS,
  ...BELT_AND_FAN_JOBS,
  ...FUEL_JOBS,
  ...AIR_AND_WATER_JOBS,
  ...STARTING_CHARGING_JOBS,
  ...IGNITION_MANAGEMENT_JOBS,
  ...WIRING_JOBS,
  ...BODY_TRAILER_JOBS,
  ...EXHAUST_JOBS,
  ...CLUTCH_GEARBOX_JOBS,
  ...ENGINE_OIL_JOBS,
  ...KEYS_GLASS_JOBS,
];
