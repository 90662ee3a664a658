import type { Failure } from '../shape/failure.ts';
import { BATTERY_FAILURES } from './battery.ts';
import { BODY_FAILURES } from './body.ts';
import { CHARGING_STARTING_FAILURES } from './charging-starting.ts';
import { COOLING_FAILURES } from './cooling.ts';
import { ENGINE_FAILURES } from './engine.ts';
import { EXHAUST_FAILURES } from './exhaust.ts';
import { FUEL_AIR_FAILURES } from './fuel-air.ts';
import { IGNITION_MANAGEMENT_FAILURES } from './ignition-management.ts';
import { LOCKS_GLASS_FAILURES } from './locks-glass.ts';
import { TRANSMISSION_FAILURES } from './transmission.ts';
import { WIRING_FAILURES } from './wiring.ts';

/** Failures of the engine bay, the body, the trailer, keys and glass. */
export const SYSTEM_FAILURES: readonly Failure[] = [
  ...BATTERY_FAILURES,
  ...CHARGING_STARTING_FAILURES,
  ...WIRING_FAILURES,
  ...IGNITION_MANAGEMENT_FAILURES,
  ...FUEL_AIR_FAILURES,
  ...COOLING_FAILURES,
  ...TRANSMISSION_FAILURES,
  ...EXHAUST_FAILURES,
  ...BODY_FAILURES,
  ...ENGINE_FAILURES,
  ...LOCKS_GLASS_FAILURES,
];
