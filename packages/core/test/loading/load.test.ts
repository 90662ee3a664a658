import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axleShare } from '../../src/loading/axle-share.ts';
import type { LoadInput } from '../../src/loading/load-input.ts';
import { loadOf, loadRatios } from '../../src/loading/load.ts';
import { grams, inches, kilograms, metres } from '../../src/quantity/units.ts';

const POUND = 0.45359237;

const bare: LoadInput = {
  wheelbase: metres(2.75),
  emptyFront: kilograms(1100),
  emptyRear: kilograms(900),
  ratedFront: kilograms(1400),
  ratedRear: kilograms(1600),
  ratedGross: kilograms(2900),
  ratedRoof: kilograms(100),
  loadIndexTable: [
    { index: 112, kg: 1120 },
    { index: 100, kg: 800 },
  ],
  berths: [
    { id: 'roof', name: 'Roof', x: metres(1.4), roof: true },
    { id: 'tray', name: 'Tray', x: metres(3.45), limit: kilograms(200), roof: false },
    { id: 'nose', name: 'Bull bar locker', x: metres(-0.6), roof: false },
  ],
  fixed: [],
  kit: [],
};

function value(input: LoadInput) {
  const result = loadOf(input);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

describe('axle loads', () => {
  it('[M13] 10,000 lb at 120 in on a wheelbase of 150 in puts 8,000 lb on the rear and 2,000 lb on the front', () => {
    // Worked example of a public explanation of axle loads by moments (front axle as zero).
    const share = axleShare(inches(120), inches(150));
    expect(10_000 * share.rear).toBeCloseTo(8000, 9);
    expect(10_000 * share.front).toBeCloseTo(2000, 9);
  });

  it('[M13] 90 kg at 3.45 m on a wheelbase of 2.75 m: rear +112.9 kg, front -22.9 kg', () => {
    // Computed by hand: 90 x 3.45 / 2.75 = 112.909; 90 - 112.909 = -22.909.
    const load = value({ ...bare, kit: [{ id: 'kit', grams: grams(90_000), berth: 'tray' }] });
    expect(load.rear.kg - 900).toBeCloseTo(112.909, 3);
    expect(load.front.kg - 1100).toBeCloseTo(-22.909, 3);
    expect(load.gross.kg).toBeCloseTo(2090, 9);
    expect(load.gross.marginKg).toBeCloseTo(810, 9);
  });

  it('[M13] the axles together always carry exactly what the vehicle weighs', () => {
    const mass = fc.double({ min: 0, max: 400, noNaN: true });
    const place = fc.double({ min: -1.5, max: 6, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(mass, place), { maxLength: 12 }), (things) => {
        const load = value({
          ...bare,
          fixed: things.map(([kg, x], n) => ({
            id: `t${n}`,
            name: `t${n}`,
            mass: kilograms(kg),
            kind: 'cargo' as const,
            x: metres(x),
          })),
        });
        expect(load.front.kg + load.rear.kg).toBeCloseTo(load.gross.kg, 6);
      }),
      { numRuns: 200 },
    );
  });

  it('[M13] a mass behind the rear axle lifts the front, one ahead of the front axle lifts the rear', () => {
    const behind = value({ ...bare, kit: [{ id: 'k', grams: grams(50_000), berth: 'tray' }] });
    expect(behind.front.kg).toBeLessThan(1100);
    expect(behind.rear.kg).toBeGreaterThan(950);
    const ahead = value({ ...bare, kit: [{ id: 'k', grams: grams(50_000), berth: 'nose' }] });
    expect(ahead.rear.kg).toBeLessThan(900);
    expect(ahead.front.kg).toBeGreaterThan(1150);
  });

  it('[M13] a trailer nose without a measured place hangs behind the rear axle, and the result says it was assumed', () => {
    const load = value({
      ...bare,
      fixed: [{ id: 'nose', name: 'Camper nose', mass: kilograms(80), kind: 'trailer-nose' }],
    });
    expect(load.rear.kg).toBeCloseTo(900 + (80 * (2.75 + 1.1)) / 2.75, 9);
    expect(load.assumed).toEqual(['Camper nose']);
  });

  it('[M13] a measured distance goes before the berth', () => {
    const water = {
      id: 'w',
      name: 'Water',
      mass: kilograms(40),
      kind: 'cargo' as const,
      berth: 'tray',
      x: metres(2.75),
    };
    const load = value({ ...bare, fixed: [water] });
    expect(load.rear.kg).toBeCloseTo(940, 9);
    expect(load.berths.find((b) => b.id === 'tray')?.kg).toBe(40);
  });

  it('[M13] people and cargo without a place are assumed; with a berth they are not', () => {
    const load = value({
      ...bare,
      fixed: [
        { id: 'p', name: 'Driver', mass: kilograms(80), kind: 'person' },
        { id: 'w', name: 'Water', mass: kilograms(40), kind: 'cargo', berth: 'tray' },
      ],
    });
    expect(load.assumed).toEqual(['Driver']);
    expect(load.front.kg).toBeCloseTo(1100 + 40 + 40 * (1 - 3.45 / 2.75), 9);
  });
});

describe('limits', () => {
  it('[M13] room for cargo is the rated room less the people: 1,500 lb - 750 lb = 750 lb', () => {
    // The "steps for determining correct load limit" printed in vehicle manuals: five people of 150 lb, placard 1,500 lb.
    const load = value({
      ...bare,
      ratedGross: kilograms(2000 + 1500 * POUND),
      fixed: Array.from({ length: 5 }, (_, n) => ({
        id: `p${n}`,
        name: `p${n}`,
        mass: kilograms(150 * POUND),
        kind: 'person' as const,
      })),
    });
    expect((load.gross.marginKg ?? Number.NaN) / POUND).toBeCloseTo(750, 9);
  });

  it('[M13] a passenger tyre counts for its rating / 1.10, others in full, two to an axle', () => {
    // 49 CFR 571.120 (FMVSS 120), S5.1.2. Load index 112 = 1,120 kg, 100 = 800 kg.
    const truck = value({ ...bare, tyre: { loadIndex: 112, passenger: false } });
    expect(truck.tyresRear?.limitKg).toBe(2240);
    const passenger = value({ ...bare, tyre: { loadIndex: 100, passenger: true } });
    expect(passenger.tyresRear?.limitKg).toBeCloseTo(1600 / 1.1, 9);
    expect(passenger.tyresFront?.marginKg).toBeCloseTo(1600 / 1.1 - 1100, 9);
    expect(value(bare).tyresRear).toBeNull();
  });

  it('[M13] the roof counts only what rides on it, and a berth knows its own limit', () => {
    const load = value({
      ...bare,
      kit: [
        { id: 'shovel', grams: grams(2_500), berth: 'roof' },
        { id: 'jack', grams: grams(210_000), berth: 'tray' },
      ],
    });
    expect(load.roof).toEqual({ kg: 2.5, limitKg: 100, marginKg: 97.5 });
    const tray = load.berths.find((b) => b.id === 'tray');
    expect(tray?.marginKg).toBeCloseTo(-10, 9);
    expect(load.berths.find((b) => b.id === 'nose')?.marginKg).toBeNull();
  });

  it('[M13] kit without a berth rides in the kit berth', () => {
    const load = value({ ...bare, kitBerth: 'tray', kit: [{ id: 'k', grams: grams(10_000), berth: null }] });
    expect(load.berths.find((b) => b.id === 'tray')?.kg).toBeCloseTo(10, 9);
    expect(load.assumed).toEqual([]);
  });

  it('[M13] the ratios the rates use are load over rating', () => {
    const ratios = loadRatios(value({ ...bare, kit: [{ id: 'k', grams: grams(90_000), berth: 'tray' }] }));
    expect(ratios.rear).toBeCloseTo((900 + 112.909) / 1600, 5);
    expect(ratios.gross).toBeCloseTo(2090 / 2900, 9);
  });
});

describe('refusals', () => {
  it.each([
    ['wheelbase-not-positive', { wheelbase: metres(0) }],
    ['berth-unknown', { kitBerth: 'attic', kit: [{ id: 'k', grams: grams(1), berth: null }] }],
    ['load-index-unknown', { tyre: { loadIndex: 12, passenger: false } }],
    ['mass-negative', { kit: [{ id: 'k', grams: grams(-1), berth: null }] }],
  ] satisfies [string, Partial<LoadInput>][])('[M13] refuses %s', (id, change) => {
    const result = loadOf({ ...bare, ...change });
    expect(result.ok ? 'accepted' : result.error.id).toBe(id);
  });
});
