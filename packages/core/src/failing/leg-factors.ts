import type { Kelvins } from '../quantity/units.ts';
import { fromFlag, fromGroup, fromSteps, shown } from './factor.ts';
import type { RateInput, RateLeg } from './rate-input.ts';
import type { Factor } from './rate-result.ts';
import { roughnessFactor } from './roughness.ts';

/** Kelvins at 0 degrees Celsius, exact by definition. */
const ICE_POINT = 273.15;

/** Factors of a group that the leg brings: roughness, pace, heat, cold, altitude, stones, dust (M1). */
export function legFactors(input: RateInput, group: string, leg: RateLeg): readonly Factor[] {
  const { features } = input.vehicle;
  const t = input.tables.factors;
  return [
    ...roughness(input, group, leg),
    ...(leg.resonancePace ? fromFlag(t.corrugationPace, group, features) : []),
    ...fromSteps(t.heat, celsius(leg.hottest), group, features, '°C'),
    ...fromSteps(t.cold, celsius(leg.coldest), group, features, '°C'),
    ...fromSteps(t.altitude, leg.altitude, group, features, 'm'),
    ...fromGroup(t.stones, t.stones.words[leg.stones], group, features, leg.stones),
    ...(leg.dusty ? fromFlag(t.dust, group, features) : []),
  ];
}

/** The surface's base rate already holds the roughness it stands for, so only the difference counts. */
function roughness({ tables }: RateInput, group: string, leg: RateLeg): readonly Factor[] {
  const t = tables.factors.roughness;
  if (leg.iri === undefined || !t.groups.includes(group)) return [];
  const usual = t.surfaceIri[leg.surface];
  const factor = roughnessFactor(t, leg.iri) / roughnessFactor(t, usual);
  return [shown(t, factor, `${leg.iri} m/km where ${usual} is usual`)];
}

/** Printed tables are in degrees Celsius; rounded, because 35 °C must come back as 35. */
export function celsius(k: Kelvins | undefined): number | undefined {
  return k === undefined ? undefined : Math.round((k - ICE_POINT) * 1000) / 1000;
}
