import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import { addEntry, entryOf } from './add-entry.ts';
import { checkOdometer, travelledKm } from './odometer.ts';
import type { RepairLimits } from './repair-limits.ts';

export interface RepairDone {
  readonly id: string;
  readonly vehicle: string;
  /** Catalogue job, and the weaker way it was done in. */
  readonly job: string;
  readonly expedient?: string;
  readonly failure?: string;
  readonly on: string;
  /** As the odometer shows. */
  readonly atKm: number;
  readonly note?: string;
}

/** Records a repair with how far and how fast it may be trusted and when to look again (./repair-limits.ts). */
export function recordRepair(garage: Garage, done: RepairDone, limits: RepairLimits): Result<Garage> {
  const { id, ...what } = done;
  const checked = checkOdometer(garage, done.vehicle, done.atKm, done.on);
  if (!checked.ok) return checked;
  return addEntry(garage, 'repairs', id, { ...what, ...limits, lookAgainKm: [...limits.lookAgainKm] });
}

export interface Look {
  readonly id: string;
  readonly repair: string;
  readonly on: string;
  readonly atKm: number;
  readonly found: 'good' | 'worse';
  readonly note?: string;
}

/** Records a look at a repair. */
export function recordRecheck(garage: Garage, look: Look): Result<Garage> {
  const { id, ...what } = look;
  const repair = entryOf(garage, 'repairs', look.repair);
  if (!repair.ok) return repair;
  const { vehicle, on, atKm } = repair.value;
  if (look.on < on)
    return refuse(
      'date-before',
      `The repair was done on ${on}; nobody can have looked at it before, on ${look.on}`,
    );
  const checked = checkOdometer(garage, vehicle, look.atKm, look.on);
  if (!checked.ok) return checked;
  if (checked.value < travelledKm(garage, vehicle, atKm, on))
    return refuse(
      'odometer-back',
      `The repair was done at ${atKm} km, so a look at ${look.atKm} km cannot come after it`,
    );
  return addEntry(garage, 'rechecks', id, what);
}

/** Records the permanent fix of a temporary repair, or of what was only made safe. */
export function mendForGood(garage: Garage, id: string, on: string): Result<Garage> {
  const repair = entryOf(garage, 'repairs', id);
  if (!repair.ok) return repair;
  if (repair.value.lasts === 'permanent')
    return refuse(
      'repair-permanent',
      'This repair is a permanent one already; there is nothing to put right',
    );
  if (repair.value.mendedOn !== undefined)
    return refuse('repair-mended', `This was put right on ${repair.value.mendedOn} already`);
  if (on < repair.value.on)
    return refuse(
      'date-before',
      `The repair was done on ${repair.value.on} and cannot be put right before, on ${on}`,
    );
  return ok({ ...garage, repairs: { ...garage.repairs, [id]: { ...repair.value, mendedOn: on } } });
}
