import { describe, expect, it } from 'vitest';
import { ACCUMULATED_KM } from '../src/rates/accumulated-km.ts';
import { ALTITUDE } from '../src/rates/altitude.ts';
import { BATTERY_AGE } from '../src/rates/battery-age.ts';
import { BATTERY_PER_DAY, BATTERY_PER_FRIDGE_NIGHT } from '../src/rates/battery-days.ts';
import { CARE } from '../src/rates/care.ts';
import { COLD, WAXING } from '../src/rates/cold.ts';
import { CORRUGATION_PACE } from '../src/rates/corrugation-pace.ts';
import { CROSSINGS } from '../src/rates/crossings.ts';
import { DRIVER } from '../src/rates/driver.ts';
import { DUST, DUST_FILTER } from '../src/rates/dust.ts';
import { FUEL_QUALITY } from '../src/rates/fuel-quality.ts';
import { HEAT } from '../src/rates/heat.ts';
import { LOAD } from '../src/rates/load.ts';
import {
  ADDED_CIRCUITS,
  LARGE_TYRES,
  LIFT_KIT,
  LOCKERS_ON_ROCK,
  ROOF_OVERLOAD,
} from '../src/rates/modifications.ts';
import { RECENT_WORK } from '../src/rates/recent-work.ts';
import { ROUGHNESS } from '../src/rates/roughness.ts';
import type { FlagFactor, GroupFactors, StepFactor } from '../src/rates/shape.ts';
import { STONES } from '../src/rates/stones.ts';
import { VEHICLE_AGE } from '../src/rates/vehicle-age.ts';
import { SURFACES } from '../src/shape/words.ts';

function stepAt(table: StepFactor, reading: number): GroupFactors {
  const step = table.steps.find((s) => reading <= s.upTo);
  if (step === undefined) throw new Error(`${table.id} has no step for ${reading}`);
  return step.by;
}

function roughness(iri: number): number {
  const { slope, referenceIri, linearAboveIri } = ROUGHNESS;
  const curved = Math.exp(slope * (Math.min(iri, linearAboveIri) - referenceIri));
  return curved * (1 + slope * Math.max(0, iri - linearAboveIri));
}

describe('steps and words', () => {
  it.each([BATTERY_AGE, HEAT, COLD, ALTITUDE])('[M1] every reading of $id finds a step', (table) => {
    const ends = table.steps.map((s) => s.upTo);
    expect(ends).toEqual([...new Set(ends)].sort((a, b) => a - b));
    expect(ends.at(-1)).toBe(Number.POSITIVE_INFINITY);
  });

  it('[M1] an older battery is never less likely to fail', () => {
    const factors = BATTERY_AGE.steps.map((s) => s.by.battery ?? Number.NaN);
    expect(factors).toEqual([...factors].sort((a, b) => a - b));
    expect(stepAt(BATTERY_AGE, 5).battery).toBe(1);
    expect(stepAt(BATTERY_AGE, 9).battery).toBe(3);
  });

  it('[M1] heat and altitude only raise, and only past their limits', () => {
    expect(stepAt(HEAT, 35)).toEqual({});
    expect(stepAt(HEAT, 36).cooling).toBe(1.5);
    expect(stepAt(HEAT, 36).tyre).toBe(1.5);
    expect(stepAt(ALTITUDE, 3000)).toEqual({});
    expect(stepAt(ALTITUDE, 3001).cooling).toBe(1.3);
  });

  it('[M1] colder is worse for battery and starter', () => {
    for (const group of ['battery', 'charging-starting'] as const) {
      const at = (c: number) => stepAt(COLD, c)[group] ?? 1;
      expect(at(-25)).toBeGreaterThan(at(-15));
      expect(at(-15)).toBeGreaterThan(at(0));
      // A range of two to four, motoring club days of hard frost: estimate.
      expect(at(-15)).toBeGreaterThanOrEqual(2);
      expect(at(-25)).toBeLessThanOrEqual(4);
    }
  });

  it('[M1] care, driving and stones run from better to worse', () => {
    expect([CARE.words.fresh.cooling, CARE.words.good.cooling, CARE.words.neglected.cooling]).toEqual([
      0.3, 0.6, 2,
    ]);
    expect(CARE.words.average).toEqual({});
    expect(CARE.words.fresh.tyre).toBeUndefined();
    expect([DRIVER.words.gentle.suspension, DRIVER.words.hard.suspension]).toEqual([0.5, 2]);
    expect(DRIVER.words.hard.battery).toBeUndefined();
    const sharp = STONES.words.sharp.tyre ?? 0;
    const staked = STONES.words.staked.tyre ?? 0;
    expect(sharp).toBeGreaterThanOrEqual(2);
    expect(staked).toBeGreaterThan(sharp);
    expect(staked).toBeLessThanOrEqual(4);
  });
});

describe('curves', () => {
  // World Bank HDM-III parts consumption of light vehicles, tabulated relative to IRI 3: recalled, not re-read.
  it.each([
    [3, 1],
    [4, 1.2],
    [5, 1.4],
    [6, 1.7],
    [7, 2.0],
    [8, 2.4],
    [9, 2.9],
    [10, 3.5],
    [12, 4.5],
    [14, 5.6],
  ])('[M1] roughness at IRI %s is about %s', (iri, printed) => {
    expect(Math.abs(roughness(iri) - printed)).toBeLessThan(0.06);
  });

  it('[M1] the roughness curve has no step and no kink where it turns straight', () => {
    const at = ROUGHNESS.linearAboveIri;
    const before = (roughness(at) - roughness(at - 1e-4)) / 1e-4;
    const after = (roughness(at + 1e-4) - roughness(at)) / 1e-4;
    expect(after).toBeCloseTo(before, 3);
  });

  it('[M1] rougher classes of surface stand for more roughness', () => {
    const { sealed, gravel, corrugated, rock } = ROUGHNESS.surfaceIri;
    expect([sealed, gravel, corrugated, rock]).toEqual(
      [sealed, gravel, corrugated, rock].sort((a, b) => a - b),
    );
    expect(sealed).toBe(ROUGHNESS.referenceIri);
  });

  it('[M1] twice the distance run is 1.24 times the trouble', () => {
    expect(2 ** ACCUMULATED_KM.exponent).toBeCloseTo(1.24, 2);
    expect(ACCUMULATED_KM.leastKm).toBeGreaterThan(0);
  });

  it('[M1] age reaches its limits at 0 and at 20 years and not before', () => {
    const { perYear, referenceYears, least, greatest } = VEHICLE_AGE;
    const plain = (years: number) => 1 + perYear * (years - referenceYears);
    expect(plain(0)).toBeCloseTo(least, 12);
    expect(plain(20)).toBeCloseTo(greatest, 12);
    // RAND MR-1789: 3 to 7 % a year.
    expect(perYear).toBeGreaterThanOrEqual(0.03);
    expect(perYear).toBeLessThanOrEqual(0.07);
  });

  it('[M1] ten per cent over the rating is 1.6 times the suspension trouble', () => {
    expect(1.1 ** (LOAD.exponents.suspension ?? 0)).toBeCloseTo(1.6, 1);
    expect(LOAD.exponents).toEqual({ tyre: 4, suspension: 5, brakes: 2, driveline: 2, cooling: 2 });
  });
});

describe('events on top', () => {
  it('[M1] a year of days is a tenth of a battery', () => {
    expect(BATTERY_PER_DAY.each * 365).toBeCloseTo(0.1, 12);
    expect(BATTERY_PER_FRIDGE_NIGHT.when).toEqual({ all: ['fridge'], none: ['solar'] });
  });

  it('[M1] deeper water is worse, and an event is shared out whole', () => {
    const { belowHub, hubToSill, sillToBonnet, aboveIntake } = CROSSINGS.each;
    expect([belowHub, hubToSill, sillToBonnet, aboveIntake]).toEqual([0.0005, 0.005, 0.02, 0.1]);
    const split = CROSSINGS.split;
    expect(Object.values(split).reduce((sum, s) => sum + s, 0)).toBeCloseTo(1, 12);
    expect((split.wiring ?? 0) + (split['charging-starting'] ?? 0)).toBeCloseTo(0.5, 12);
    expect(split.engine).toBe(0.15);
  });

  it('[M1] dirt goes to the filters', () => {
    expect(FUEL_QUALITY.each).toBeGreaterThanOrEqual(0.01);
    expect(FUEL_QUALITY.each).toBeLessThanOrEqual(0.03);
    expect(DUST_FILTER.each / 10).toBeCloseTo(0.05, 12);
    expect(DUST.by['charging-starting']).toBe(1.5);
    expect(WAXING.each).toBeGreaterThanOrEqual(0.02);
    expect(WAXING.each).toBeLessThanOrEqual(0.1);
  });

  it('[M1] added circuits follow the wiring rates from surface to surface', () => {
    // Wiring events per 10,000 km by surface: the rates the failure groups start from (estimate).
    const wiring = { sealed: 0.03, gravel: 0.06, corrugated: 0.25, rock: 0.2, sand: 0.06 };
    for (const surface of SURFACES) {
      expect(ADDED_CIRCUITS.eachPer10000km[surface]).toBeCloseTo((0.01 * wiring[surface]) / 0.25, 12);
    }
  });
});

describe('factors on part of a group', () => {
  const spread: readonly FlagFactor[] = [CORRUGATION_PACE, LIFT_KIT, LOCKERS_ON_ROCK, ROOF_OVERLOAD];
  it.each(spread)('[M1] $id spreads what it does to one part over its group', (factor) => {
    const part = factor.onPart;
    if (part === undefined) throw new Error('no part named');
    const whole = 1 + part.shareOfGroup * (part.factor - 1);
    for (const by of Object.values(factor.by)) expect(by).toBeCloseTo(whole, 12);
  });

  it('[M1] large tyres and recent work', () => {
    expect(LARGE_TYRES.by).toEqual({ steering: 1.5, driveline: 1.5 });
    expect(RECENT_WORK.factor).toBe(2);
    expect(RECENT_WORK.shakedownKm).toBeLessThan(RECENT_WORK.withinKm);
  });
});
