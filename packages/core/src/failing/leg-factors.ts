import { covers, factorOf } from './factor.ts';
import type { RateInput, RateLeg } from './rate-input.ts';
import type { Factor } from './rate-result.ts';
import { roughnessFactor } from './roughness.ts';

/** Kelvins at 0 degrees Celsius, exact by definition. */
export const ICE_POINT = 273.15;

/** Factors of a group that the leg brings: roughness, pace, heat, cold, altitude, stones, dust (M1). */
export function legFactors(input: RateInput, group: string, leg: RateLeg): readonly Factor[] {
  const t = input.tables.factors;
  const out: Factor[] = [];
  if (leg.iri !== undefined && covers(t.roughness, group)) {
    // The surface class already holds the roughness it stands for, so only the difference counts.
    const usual = roughnessFactor(t.roughness.points, t.roughness.surfaceIri[leg.surface]);
    const factor = roughnessFactor(t.roughness.points, leg.iri) / usual;
    out.push(factorOf('roughness', `Roughness ${leg.iri} m/km`, factor, t.roughness.basis));
  }
  if (leg.resonancePace && covers(t.pace, group)) {
    out.push(factorOf('pace', 'Driven at the shaking pace', t.pace.factor, t.pace.basis));
  }
  for (const rule of t.heat) {
    if (leg.hottest === undefined || !covers(rule, group) || !(leg.hottest > rule.threshold + ICE_POINT))
      continue;
    const soft = leg.softTyres === true ? rule.softTyres : undefined;
    const title = `Hotter than ${rule.threshold} °C${soft === undefined ? '' : ', on soft tyres'}`;
    out.push(factorOf('heat', title, soft ?? rule.factor, rule.basis));
  }
  for (const rule of t.cold) {
    if (leg.coldest === undefined || !covers(rule, group) || !(leg.coldest < rule.threshold + ICE_POINT))
      continue;
    out.push(factorOf('cold', `Colder than ${rule.threshold} °C`, rule.factor, rule.basis));
  }
  for (const rule of t.altitude) {
    if (leg.altitude === undefined || !covers(rule, group) || !(leg.altitude > rule.threshold)) continue;
    out.push(factorOf('altitude', `Above ${rule.threshold} m`, rule.factor, rule.basis));
  }
  if (covers(t.stones, group)) {
    out.push(factorOf('stones', `Stones: ${leg.stones}`, t.stones.factor[leg.stones], t.stones.basis));
  }
  for (const rule of t.dust) {
    if (leg.dusty && covers(rule, group)) out.push(factorOf('dust', 'Dust', rule.factor, rule.basis));
  }
  return out.filter((f) => f.factor !== 1);
}
