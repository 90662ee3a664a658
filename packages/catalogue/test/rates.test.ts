import { describe, expect, it } from 'vitest';
import { RATE_FACTORS } from '../src/rates/all.ts';
import { spread } from '../src/rates/shape.ts';

const t = RATE_FACTORS;

function modification(id: string) {
  const found = t.modifications.find((m) => m.id === id);
  if (found === undefined) throw new Error(`no modification ${id}`);
  return found;
}

/** Product of the thresholds passed, as several that are passed multiply. */
function cold(group: string, celsius: number): number {
  return t.cold
    .filter((rule) => rule.groups.some((g) => g === group) && celsius < rule.threshold)
    .reduce((product, rule) => product * rule.factor, 1);
}

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
    const point = t.roughness.points.find((p) => p.iri === iri);
    expect(Math.abs((point?.factor ?? 0) - printed)).toBeLessThan(0.06);
  });

  it('[M1] roughness rises all the way, and evenly from where the model runs straight', () => {
    const points = t.roughness.points;
    const rises = points.slice(1).map((p, i) => p.factor - (points[i]?.factor ?? Number.NaN));
    expect(Math.min(...rises)).toBeGreaterThan(0);
    // 120 counts of QI, about 13 to 1 m/km of IRI: straight from 9.23 on.
    const straight = rises.slice(points.findIndex((p) => p.iri === 9.5));
    expect(Math.max(...straight) - Math.min(...straight)).toBeLessThan(1e-9);
  });

  it('[M1] rougher surfaces stand for more roughness, sealed roads for the reference', () => {
    const { sealed, gravel, corrugated, rock, sand } = t.roughness.surfaceIri;
    expect([sealed, sand, gravel, corrugated, rock]).toEqual(
      [sealed, gravel, corrugated, rock, sand].sort((a, b) => a - b),
    );
    expect(t.roughness.points.find((p) => p.iri === sealed)?.factor).toBe(1);
  });

  it('[M1] twice the distance run is 1.24 times the trouble', () => {
    expect(2 ** t.distance.exponent).toBeCloseTo(1.24, 2);
    expect(t.distance.least).toBeLessThan(1);
    expect(t.distance.most).toBeGreaterThan(1);
  });

  it('[M1] age reaches its limits when new and at 20 years, and not before', () => {
    const { perYear, referenceYears, least, most } = t.age;
    const plain = (years: number) => 1 + perYear * (years - referenceYears);
    expect([least, most]).toEqual([0.5, 1.5]);
    expect(plain(0)).toBeCloseTo(least, 12);
    expect(plain(20)).toBeCloseTo(most, 12);
    // RAND MR-1789: 3 to 7 % a year.
    expect(perYear).toBeGreaterThanOrEqual(0.03);
    expect(perYear).toBeLessThanOrEqual(0.07);
  });

  it('[M1] an older battery is never less likely to fail', () => {
    const { steps, groups } = t.batteryAge;
    expect(groups).toEqual(['battery']);
    expect(steps.map((s) => s.fromYears)).toEqual([0, 4, 5, 6, 7]);
    const factors = steps.map((s) => s.factor);
    expect(factors).toEqual([...factors].sort((a, b) => a - b));
    expect(factors).toEqual([0.3, 0.6, 1, 2, 3]);
  });

  it('[M1] ten per cent over the rating is 1.6 times the suspension trouble', () => {
    const exponent = (group: string) => t.load.find((rule) => rule.groups.some((g) => g === group))?.exponent;
    expect(1.1 ** (exponent('suspension') ?? 0)).toBeCloseTo(1.6, 1);
    expect(['tyre', 'brakes', 'driveline', 'cooling'].map(exponent)).toEqual([4, 2, 2, 2]);
    const named = t.load.flatMap((rule) => rule.groups);
    expect(new Set(named).size).toBe(named.length);
  });
});

describe('words and thresholds', () => {
  it('[M1] care, driving and stones run from better to worse about 1', () => {
    const { fresh, good, average, neglected } = t.care.factor;
    expect([fresh, good, average, neglected]).toEqual([0.3, 0.6, 1, 2]);
    expect(t.care.groups).not.toContain('tyre');
    const { gentle, hard } = t.driver.factor;
    expect([gentle, t.driver.factor.average, hard]).toEqual([0.5, 1, 2]);
    expect(t.driver.groups).not.toContain('battery');
    const { none, gravel, sharp, staked } = t.stones.factor;
    expect([none, gravel]).toEqual([1, 1]);
    expect(sharp).toBeGreaterThanOrEqual(2);
    expect(staked).toBeGreaterThan(sharp);
    expect(staked).toBeLessThanOrEqual(4);
  });

  it('[M1] heat and height only raise', () => {
    const cooling = t.heat.find((rule) => rule.groups.includes('cooling'));
    expect([cooling?.threshold, cooling?.factor, cooling?.groups]).toEqual([35, 1.5, ['cooling']]);
    // Trade reference: soft tyres in heat three times, firm ones half as much again.
    const tyre = t.heat.find((rule) => rule.groups.includes('tyre'));
    expect([tyre?.threshold, tyre?.factor, tyre?.softTyres]).toEqual([35, 1.5, 3]);
    expect(t.altitude.map((rule) => [rule.groups, rule.threshold, rule.factor])).toEqual([
      [['cooling'], 3000, 1.3],
    ]);
    for (const rule of [...t.heat, ...t.cold, ...t.altitude]) expect(rule.factor).toBeGreaterThan(1);
  });

  it('[M1] cold makes two to four times the battery trouble', () => {
    expect([-5, -15, -25].map((c) => cold('battery', c))).toEqual([1, 2, 4]);
    expect([-5, -15, -25].map((c) => cold('charging-starting', c))).toEqual([1, 2, 3]);
  });

  it('[M1] work done lately doubles, dust wears brushes', () => {
    expect([t.recentWork.factor, t.recentWork.withinKm]).toEqual([2, 1000]);
    expect(t.dust.map((rule) => [rule.groups, rule.factor])).toEqual([[['charging-starting'], 1.5]]);
  });
});

describe('factors on part of a group', () => {
  it('[M1] spreading over all of a group keeps the factor, over none of it leaves 1', () => {
    expect(spread(2.5, 1)).toBe(2.5);
    expect(spread(2.5, 0)).toBe(1);
    expect(spread(3, 1 / 2)).toBe(2);
  });

  it('[M1] pace, lift, lockers and roof act on their share, large tyres on the whole', () => {
    expect(t.pace.factor).toBeCloseTo(1.5, 12);
    expect(modification('lift-kit').factor).toBeCloseTo(1.25, 12);
    expect(modification('lift-kit').liftMoreThanMm).toBe(50);
    expect(modification('lockers-on-rock').factor).toBeCloseTo(1.5, 12);
    expect(modification('lockers-on-rock').surface).toBe('rock');
    expect(modification('roof-overload').factor).toBeCloseTo(5 / 3, 12);
    expect(modification('large-tyres').groups).toEqual(['steering', 'driveline']);
    expect(modification('large-tyres').factor).toBe(1.5);
  });
});

describe('events on top', () => {
  it('[M1] a year of days is a tenth of a battery; a fridge counts without solar only', () => {
    expect([t.perDay.perYear, t.perDay.perCampNight]).toEqual([0.1, 0.0005]);
    expect(t.perDay.campNightWhen).toEqual({ all: ['fridge'], none: ['solar'] });
  });

  it('[M1] deeper water is worse, and an event is shared out whole', () => {
    const { belowHub, hubToSill, sillToBonnet, aboveIntake } = t.crossing.events;
    expect([belowHub, hubToSill, sillToBonnet, aboveIntake]).toEqual([0.0005, 0.005, 0.02, 0.1]);
    const share = (...groups: string[]) =>
      t.crossing.split.filter((s) => groups.includes(s.group)).reduce((sum, s) => sum + s.share, 0);
    expect(share('wiring', 'charging-starting')).toBeCloseTo(0.5, 12);
    expect([share('driveline'), share('cooling'), share('engine')]).toEqual([0.25, 0.1, 0.15]);
    expect(t.crossing.split.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1, 12);
  });

  it('[M1] summer diesel waxes below ten degrees of frost, 0.02 to 0.1 times a night', () => {
    expect([t.waxing.failure, t.waxing.below, t.waxing.when]).toEqual([
      'diesel-waxed',
      -10,
      { all: ['diesel'] },
    ]);
    expect(t.waxing.perNight).toBeGreaterThanOrEqual(0.02);
    expect(t.waxing.perNight).toBeLessThanOrEqual(0.1);
  });

  it('[M1] dirt goes to the filters, added circuits to the wiring', () => {
    expect(t.fillEvents.perFill).toBeGreaterThanOrEqual(0.01);
    expect(t.fillEvents.perFill).toBeLessThanOrEqual(0.03);
    expect(t.dustEvents.per1000km).toBe(0.05);
    expect([t.circuits.group, t.circuits.per10000km, t.circuits.surface]).toEqual([
      'wiring',
      0.01,
      'corrugated',
    ]);
  });
});
