import type { RepairWatch } from '@waymend/core/caring/repair-watch';
import { watchRepair } from '@waymend/core/caring/repair-watch';
import type { Garage } from '@waymend/garage/record/schema';
import { odometerOf, travelledKm } from '@waymend/garage/road/odometer';
import type { Trade } from '../trade.ts';

/** A repair that still asks for something. */
export interface OpenRepair extends RepairWatch {
  readonly id: string;
  readonly title: string;
  readonly lasts: 'permanent' | 'temporary' | 'made-safe';
  readonly on: string;
  readonly speedKmh: number | null;
  /** What must not be forgotten of the weaker way, in the catalogue's words; null where there is none. */
  readonly limits: string | null;
}

/**
 * Repairs of a vehicle that are not mended for good, and permanent ones that are still to be looked at again. Distances are
 * travelled ones; `nowKm` absent: the last figure the record has.
 */
export function openRepairs(
  garage: Garage,
  vehicle: string,
  trade: Trade,
  nowKm?: number,
): readonly OpenRepair[] {
  const now = nowKm ?? lastKnownKm(garage, vehicle);
  return Object.entries(garage.repairs).flatMap(([id, repair]) => {
    if (repair.vehicle !== vehicle) return [];
    const at = (km: number, on: string) => travelledKm(garage, vehicle, km, on);
    const watch = watchRepair(
      {
        lasts: repair.lasts,
        atKm: at(repair.atKm, repair.on),
        ...(repair.trustKm === undefined ? {} : { trustKm: repair.trustKm }),
        lookAgainKm: repair.lookAgainKm,
        mended: repair.mendedOn !== undefined,
        looks: Object.values(garage.rechecks).flatMap((look) =>
          look.repair === id ? [{ atKm: at(look.atKm, look.on), found: look.found }] : [],
        ),
      },
      now,
    );
    const open = repair.mendedOn === undefined && repair.lasts !== 'permanent';
    if (!open && watch.nextLookKm === null) return [];
    const job = trade.jobs.find((j) => j.id === repair.job);
    const way = job?.expedients.find((e) => e.id === repair.expedient);
    return [
      {
        id,
        title: way?.title ?? job?.title ?? repair.job,
        lasts: repair.lasts,
        on: repair.on,
        speedKmh: repair.speedKmh ?? null,
        limits: way?.limits ?? null,
        ...watch,
      },
    ];
  });
}

/** The last distance the record knows a vehicle to have travelled, km. */
export function lastKnownKm(garage: Garage, vehicle: string): number {
  return odometerOf(garage, vehicle).at(-1)?.travelledKm ?? garage.vehicles[vehicle]?.odometerKm ?? 0;
}
