import { inMillimetres } from '../quantity/units.ts';
import { fromFlag, fromGroup, fromSteps, shown } from './factor.ts';
import type { RateInput } from './rate-input.ts';
import type { Factor } from './rate-result.ts';
import type { Surface } from './rate-tables.ts';

/**
 * Groups that feel the load of the worse axle; the others in the load table feel the whole mass. A tyre or a spring
 * carries its axle, a brake or a gearbox moves the vehicle (M1).
 */
const FEELS_THE_AXLE: ReadonlySet<string> = new Set(['tyre', 'suspension']);

/** Factors of a group that are the same on every leg: age, care, load, driver (M1). Absent facts apply none. */
export function vehicleFactors(input: RateInput, group: string): readonly Factor[] {
  const { vehicle, trip, tables } = input;
  const t = tables.factors;
  return [
    ...distanceRun(input, group),
    ...vehicleAge(input, group),
    ...batteryAgeFactors(input, group),
    ...fromGroup(t.care, t.care.words[vehicle.care], group, vehicle.features, vehicle.care),
    ...(vehicle.recentWork.includes(group) ? [shown(t.recentWork, t.recentWork.factor)] : []),
    ...loadFactors(input, group),
    ...fromGroup(t.driver, t.driver.words[trip.driver], group, vehicle.features, trip.driver),
  ];
}

/** Also multiplies what days bring to the battery: an old one does not wait for kilometres. */
export function batteryAgeFactors({ vehicle, tables }: RateInput, group: string): readonly Factor[] {
  return fromSteps(tables.factors.batteryAge, vehicle.batteryAgeYears, group, vehicle.features, 'years');
}

function distanceRun({ vehicle, tables }: RateInput, group: string): readonly Factor[] {
  const t = tables.factors.accumulatedKm;
  if (vehicle.odometerKm === undefined || !t.groups.includes(group)) return [];
  // Against what is ordinary at this age, so that age does not count twice; never against less than `leastKm`.
  const ordinary = Math.max(t.leastKm, t.ordinaryKmPerYear * (vehicle.ageYears ?? t.assumedAgeYears));
  const factor = (Math.max(t.leastKm, vehicle.odometerKm) / ordinary) ** t.exponent;
  return [shown(t, factor, `${vehicle.odometerKm} km where ${ordinary} km would be ordinary`)];
}

function vehicleAge({ vehicle, tables }: RateInput, group: string): readonly Factor[] {
  const t = tables.factors.vehicleAge;
  if (vehicle.ageYears === undefined || !t.groups.includes(group)) return [];
  const factor = 1 + t.perYear * (vehicle.ageYears - t.referenceYears);
  return [shown(t, Math.min(t.greatest, Math.max(t.least, factor)), `${vehicle.ageYears} years`)];
}

function loadFactors({ trip, tables }: RateInput, group: string): readonly Factor[] {
  const t = tables.factors.load;
  const exponent = t.exponents[group];
  if (exponent === undefined) return [];
  const { front, rear, gross } = trip.load;
  const axle = FEELS_THE_AXLE.has(group);
  const ratio = Math.max(0, axle ? Math.max(front, rear) : gross);
  const what = axle ? 'worse axle' : 'whole vehicle';
  return [shown(t, ratio ** exponent, `${what} at ${Math.round(ratio * 100)} % of its rating`)];
}

/** Factors that modifications bring to a group on a surface (M1). */
export function modificationFactors(input: RateInput, group: string, surface: Surface): readonly Factor[] {
  const { vehicle, trip, tables } = input;
  const t = tables.factors;
  const flag = (on: boolean, rule: typeof t.liftKit | typeof t.roofOverload) =>
    on ? fromFlag(rule, group, vehicle.features) : [];
  return [
    ...flag(inMillimetres(vehicle.lift) > t.liftKit.aboveMm, t.liftKit),
    ...flag(vehicle.tyreOversize * 100 > t.largeTyres.abovePct, t.largeTyres),
    ...flag(surface === 'rock', t.lockersOnRock),
    ...flag(trip.roofOverloaded, t.roofOverload),
    ...circuits(input, group, surface),
  ];
}

/** Added circuits add events; shown as what that makes of the group's base rate. */
function circuits({ vehicle, tables }: RateInput, group: string, surface: Surface): readonly Factor[] {
  const t = tables.factors.addedCircuits;
  const base = tables.groups.find((g) => g.id === group)?.per10000km[surface] ?? 0;
  if (t.group !== group || vehicle.addedCircuits <= 0 || base <= 0) return [];
  const factor = 1 + (vehicle.addedCircuits * t.eachPer10000km[surface]) / base;
  return [shown(t, factor, `${vehicle.addedCircuits}`)];
}
