import type { VehiclePattern } from '../shape/pattern.ts';
import { ALL_WHEEL_DRIVE_CAR } from './all-wheel-drive-car.ts';
import { CAMPER_TRAILER } from './camper-trailer.ts';
import { FRAME_PICKUP_INDEPENDENT_FRONT } from './frame-pickup-independent-front.ts';
import { LIGHT_TRUCK } from './light-truck.ts';
import { LIVE_AXLE_WAGON } from './live-axle-wagon.ts';
import { VAN } from './van.ts';

/** Kinds of vehicle to start a garage from. */
export const PATTERNS: readonly VehiclePattern[] = [
  FRAME_PICKUP_INDEPENDENT_FRONT,
  LIVE_AXLE_WAGON,
  ALL_WHEEL_DRIVE_CAR,
  VAN,
  LIGHT_TRUCK,
  CAMPER_TRAILER,
];

/** The pattern of that id, or null. */
export function patternOf(id: string): VehiclePattern | null {
  return PATTERNS.find((pattern) => pattern.id === id) ?? null;
}
