import type { Garage } from '@waymend/garage/record/schema';
import { odometerOf, travelledKm } from '@waymend/garage/road/odometer';

/** What the odometer shows at a travelled distance, by the instrument that is in the vehicle on a day, km. */
export function shownKm(garage: Garage, vehicle: string, travelled: number, day: string): number {
  const last = odometerOf(garage, vehicle).findLast(({ on }) => on <= day);
  const behind = last === undefined ? 0 : travelledKm(garage, vehicle, last.km, last.on) - last.km;
  return travelled - behind;
}

/** What the odometer showed last, km; null where nobody has read it. */
export function lastShownKm(garage: Garage, vehicle: string): number | null {
  return odometerOf(garage, vehicle).at(-1)?.km ?? garage.vehicles[vehicle]?.odometerKm ?? null;
}
