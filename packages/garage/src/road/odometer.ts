import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import { addEntry, entryOf } from './add-entry.ts';

/** What a vehicle's odometer showed on a day, and the distance behind it since the first instrument, km. */
export interface Seen {
  readonly on: string;
  readonly km: number;
  readonly travelledKm: number;
}

/**
 * Distance behind the vehicle when its odometer showed `km` on a day: replaced instruments are added up. Readings of the day
 * of a replacement belong to the instrument whose figure is nearer.
 */
export function travelledKm(garage: Garage, vehicle: string, km: number, on: string): number {
  return Object.values(garage.readings).reduce((sum, reading) => {
    const { oldKm } = reading;
    if (reading.vehicle !== vehicle || oldKm === undefined || on < reading.on) return sum;
    const onNew = on > reading.on || Math.abs(km - reading.km) <= Math.abs(km - oldKm);
    return onNew ? sum + oldKm - reading.km : sum;
  }, km);
}

/** Everything the record knows of a vehicle's odometer, in the order of days and distance. */
export function odometerOf(garage: Garage, vehicle: string): readonly Seen[] {
  const repairs = Object.entries(garage.repairs);
  const looks = Object.values(garage.rechecks).filter(
    ({ repair }) => garage.repairs[repair]?.vehicle === vehicle,
  );
  const seen = [
    ...Object.values(garage.readings).filter((r) => r.vehicle === vehicle),
    ...repairs.flatMap(([, r]) => (r.vehicle === vehicle ? [{ km: r.atKm, on: r.on }] : [])),
    ...looks.map(({ atKm, on }) => ({ km: atKm, on })),
    ...Object.values(garage.breakdowns).flatMap((b) =>
      b.vehicle === vehicle ? [{ km: b.atKm, on: b.on }] : [],
    ),
  ];
  return seen
    .map(({ km, on }) => ({ km, on, travelledKm: travelledKm(garage, vehicle, km, on) }))
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.travelledKm - b.travelledKm));
}

/** Refuses a figure that is less than an earlier one, or more than a later one. */
export function checkOdometer(garage: Garage, vehicle: string, km: number, on: string): Result<number> {
  const known = entryOf(garage, 'vehicles', vehicle);
  if (!known.ok) return known;
  if (!(km >= 0))
    return refuse('odometer-negative', 'An odometer shows no less than nothing; look at the figure');
  const far = travelledKm(garage, vehicle, km, on);
  const seen = odometerOf(garage, vehicle);
  const before = seen.findLast((s) => s.on < on);
  const after = seen.find((s) => s.on > on);
  const { name, odometerKm } = known.value;
  const way = 'look at the figure again, or record that the instrument was replaced';
  if (before !== undefined && far < before.travelledKm)
    return refuse(
      'odometer-back',
      `The odometer of ${name} showed ${before.km} km on ${before.on}, so it cannot show ${km} km on ${on}; ${way}`,
    );
  if (after !== undefined && far > after.travelledKm)
    return refuse(
      'odometer-back',
      `The odometer of ${name} showed ${after.km} km on ${after.on}, so it cannot have shown ${km} km before, on ${on}; ${way}`,
    );
  if (seen.length === 0 && odometerKm !== undefined && far < odometerKm)
    return refuse(
      'odometer-back',
      `${name} is recorded with ${odometerKm} km, so its odometer cannot show ${km} km; ${way}`,
    );
  return ok(far);
}

export interface ReadingTaken {
  readonly id: string;
  readonly vehicle: string;
  readonly km: number;
  readonly on: string;
  /** The instrument was replaced: what the old one showed last, km. `km` is what the new one shows. */
  readonly oldKm?: number;
}

/** Records the odometer as read; the newest reading is also the distance that the vehicle's rates go by. */
export function recordReading(garage: Garage, taken: ReadingTaken): Result<Garage> {
  const { id, vehicle, km, on, oldKm } = taken;
  const before = checkOdometer(garage, vehicle, oldKm ?? km, on);
  if (!before.ok) return before;
  if (!(km >= 0))
    return refuse('odometer-negative', 'An odometer shows no less than nothing; look at the figure');
  const added = addEntry(garage, 'readings', id, {
    vehicle,
    km,
    on,
    ...(oldKm === undefined ? {} : { oldKm }),
  });
  if (!added.ok) return added;
  const record = added.value.vehicles[vehicle];
  const newest = odometerOf(added.value, vehicle).every((s) => s.on <= on);
  const far = Math.round(before.value);
  if (record === undefined || !newest || far < (record.odometerKm ?? 0)) return added;
  return ok({
    ...added.value,
    vehicles: { ...added.value.vehicles, [vehicle]: { ...record, odometerKm: far } },
  });
}
