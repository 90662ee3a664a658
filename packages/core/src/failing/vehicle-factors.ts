import { inMillimetres } from '../quantity/units.ts';
import { conditionHolds } from './condition.ts';
import { clip, covers, factorOf } from './factor.ts';
import type { RateInput } from './rate-input.ts';
import type { Factor } from './rate-result.ts';
import type { ModificationFactor, RateBasis, Surface } from './rate-tables.ts';

const OWN_LOG: RateBasis = {
  kind: 'computed',
  from: "the prior's shape, the breakdowns of the owner's log and the distances between its odometer readings",
};

/** Factors of a group that are the same on every leg: the vehicle, its care, its load and its driver (M1). */
export function vehicleFactors(input: RateInput, group: string): readonly Factor[] {
  const { vehicle, trip, tables } = input;
  const t = tables.factors;
  const out: Factor[] = [];
  if (vehicle.odometerKm !== undefined && covers(t.distance, group)) {
    const { exponent, referenceKm, least, most } = t.distance;
    const factor = clip((vehicle.odometerKm / referenceKm) ** exponent, least, most);
    out.push(
      factorOf(
        'distance',
        `${Math.round(vehicle.odometerKm).toLocaleString('en')} km on the clock`,
        factor,
        t.distance.basis,
      ),
    );
  }
  if (vehicle.ageYears !== undefined && covers(t.age, group)) {
    const { perYear, referenceYears, least, most } = t.age;
    const factor = clip(1 + perYear * (vehicle.ageYears - referenceYears), least, most);
    out.push(factorOf('age', `${vehicle.ageYears} years old`, factor, t.age.basis));
  }
  if (vehicle.batteryAgeYears !== undefined && covers(t.batteryAge, group)) {
    const age = vehicle.batteryAgeYears;
    const reached = t.batteryAge.steps.filter((s) => s.fromYears <= age);
    const step = reached.reduce((a, b) => (b.fromYears >= a.fromYears ? b : a), { fromYears: 0, factor: 1 });
    out.push(factorOf('battery-age', `Battery ${age} years old`, step.factor, t.batteryAge.basis));
  }
  if (covers(t.care, group)) {
    out.push(factorOf('care', `Care: ${vehicle.care}`, t.care.factor[vehicle.care], t.care.basis));
  }
  if (vehicle.recentWork.includes(group)) {
    out.push(
      factorOf('recent-work', 'Worked on in the last 1,000 km', t.recentWork.factor, t.recentWork.basis),
    );
  }
  for (const rule of t.load) {
    if (!rule.groups.includes(group)) continue;
    const { front, rear, gross } = trip.load;
    const ratio = rule.of === 'axle' ? Math.max(front, rear) : gross;
    const what = rule.of === 'axle' ? 'the heavier loaded axle' : 'the vehicle';
    const title = `Load: ${what} at ${Math.round(ratio * 100)} % of its rating`;
    out.push(factorOf('load', title, Math.max(0, ratio) ** rule.exponent, rule.basis));
  }
  if (covers(t.driver, group)) {
    out.push(factorOf('driver', `Driver: ${trip.driver}`, t.driver.factor[trip.driver], t.driver.basis));
  }
  const own = vehicle.learned?.find((l) => l.group === group);
  if (own !== undefined) out.push(factorOf('own-log', own.title, own.factor, OWN_LOG));
  return out.filter((f) => f.factor !== 1);
}

/** Factors that modifications bring to a group on a surface (M1). */
export function modificationFactors(input: RateInput, group: string, surface: Surface): readonly Factor[] {
  const { vehicle, tables } = input;
  const out: Factor[] = [];
  for (const rule of tables.factors.modifications) {
    if (!covers(rule, group) || !applies(rule, input, surface)) continue;
    out.push(factorOf(rule.id, rule.title, rule.factor, rule.basis));
  }
  const { circuits } = tables.factors;
  const base = tables.groups.find((g) => g.id === circuits.group)?.per10000km[circuits.surface] ?? 0;
  if (circuits.group === group && vehicle.addedCircuits > 0 && base > 0) {
    const title = `${vehicle.addedCircuits} added circuit${vehicle.addedCircuits === 1 ? '' : 's'}`;
    const factor = 1 + (vehicle.addedCircuits * circuits.per10000km) / base;
    out.push(factorOf('circuits', title, factor, circuits.basis));
  }
  return out;
}

function applies(rule: ModificationFactor, input: RateInput, surface: Surface): boolean {
  const { vehicle, trip } = input;
  if (!conditionHolds(rule.when, vehicle.features)) return false;
  if (rule.surface !== undefined && rule.surface !== surface) return false;
  if (rule.liftMoreThanMm !== undefined && !(inMillimetres(vehicle.lift) > rule.liftMoreThanMm)) return false;
  if (rule.oversizeMoreThanPct !== undefined && !(vehicle.tyreOversize * 100 > rule.oversizeMoreThanPct)) {
    return false;
  }
  return rule.roofOverloaded !== true || trip.roofOverloaded;
}
