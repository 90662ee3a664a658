import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import { addEntry, entryOf } from './add-entry.ts';
import { checkOdometer } from './odometer.ts';

type With<T> = T & { readonly id: string };

/** Records a care rule seen to, on a belonging or on the whole kit; what was flat is charged when it is left with charge. */
export function recordCare(garage: Garage, mark: With<Garage['careMarks'][string]>): Result<Garage> {
  const { id, ...what } = mark;
  if (what.belonging !== undefined) {
    const thing = entryOf(garage, 'belongings', what.belonging);
    if (!thing.ok) return thing;
  }
  const added = addEntry(garage, 'careMarks', id, what);
  if (!added.ok || what.belonging === undefined || !((what.chargePct ?? 0) > 0)) return added;
  const thing = added.value.belongings[what.belonging];
  if (thing?.state !== 'flat') return added;
  const belongings = { ...added.value.belongings, [what.belonging]: { ...thing, state: 'ready' as const } };
  return ok({ ...added.value, belongings });
}

/** Records a drill; who did the job has practised it from now on (M4). */
export function recordDrill(garage: Garage, drill: With<Garage['drills'][string]>): Result<Garage> {
  const { id, ...what } = drill;
  const vehicle = entryOf(garage, 'vehicles', what.vehicle);
  if (!vehicle.ok) return vehicle;
  const added = addEntry(garage, 'drills', id, what);
  if (!added.ok || what.by === undefined) return added;
  const person = entryOf(garage, 'people', what.by);
  if (!person.ok) return person;
  if (person.value.practised.includes(what.job)) return added;
  const practised = [...person.value.practised, what.job];
  return ok({ ...added.value, people: { ...garage.people, [what.by]: { ...person.value, practised } } });
}

/** Records what was used, left alone or wished for on a trip: a belonging that was there, or a thing that was not. */
export function recordUse(garage: Garage, use: With<Garage['uses'][string]>): Result<Garage> {
  const { id, ...what } = use;
  const trip = entryOf(garage, 'trips', what.trip);
  if (!trip.ok) return trip;
  if ((what.belonging === undefined) === (what.thing === undefined))
    return refuse(
      'use-unclear',
      'Say which belonging it was, or which thing of the catalogue was wished for',
    );
  if (what.thing !== undefined && what.said !== 'wished-for')
    return refuse('use-unclear', 'What was used or left alone was there: name the belonging');
  if (what.belonging !== undefined) {
    const thing = entryOf(garage, 'belongings', what.belonging);
    if (!thing.ok) return thing;
  }
  return addEntry(garage, 'uses', id, what);
}

/** Records a failure that happened; with the distances driven it teaches its rate (M1). */
export function recordBreakdown(
  garage: Garage,
  happened: With<Garage['breakdowns'][string]>,
): Result<Garage> {
  const { id, ...what } = happened;
  const checked = checkOdometer(garage, what.vehicle, what.atKm, what.on);
  if (!checked.ok) return checked;
  if (what.repair !== undefined) {
    const repair = entryOf(garage, 'repairs', what.repair);
    if (!repair.ok) return repair;
    if (repair.value.vehicle !== what.vehicle)
      return refuse('repair-elsewhere', `The repair "${what.repair}" was done on another vehicle`);
  }
  if (what.trip !== undefined) {
    const trip = entryOf(garage, 'trips', what.trip);
    if (!trip.ok) return trip;
  }
  return addEntry(garage, 'breakdowns', id, what);
}
