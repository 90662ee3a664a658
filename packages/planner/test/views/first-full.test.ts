import { describe, expect, it } from 'vitest';
import type { LoadAnswer, Margin } from '../../src/answer/plan-answer.ts';
import { firstFull } from '../../src/views/first-full.ts';

const left = (marginKg: number): Margin => ({ kg: 1000, limitKg: 1000 + marginKg, marginKg });
const load = (change: Partial<LoadAnswer>): LoadAnswer => ({
  front: left(500),
  rear: left(500),
  gross: left(500),
  roof: null,
  tyres: null,
  berths: [],
  ...change,
});
const vehicle = { wheelbaseMm: 2500 };
const garage = (xMm: number | null, roof = false) =>
  ({
    vehicles: { rig: vehicle },
    berths: xMm === null ? {} : { box: { vehicle: 'rig', name: 'Box', xMm, roof } },
    trips: { out: { vehicle: 'rig', ...(xMm === null ? {} : { kitBerth: 'box' }) } },
  }) as unknown as Parameters<typeof firstFull>[2];

describe('which limit of the vehicle a heavier kit reaches first', () => {
  it('[M13] counts every gram on the gross mass', () => {
    expect(firstFull(load({ gross: left(29) }), 42_000, garage(2500), 'out')).toEqual({
      what: 'gross',
      grams: 71_000,
    });
  });

  it('[M13] takes the rear axle share by moments: 3.0 m behind the front axle puts 1.2 times the mass on the rear', () => {
    expect(firstFull(load({ rear: left(30) }), 10_000, garage(3000), 'out')).toEqual({
      what: 'rear',
      grams: 35_000,
    });
  });

  it('[M13] a kit behind the rear axle never fills the front one', () => {
    expect(firstFull(load({ front: left(1) }), 10_000, garage(3000), 'out')?.what).toBe('rear');
  });

  it('[M13] rides over the rear axle when the trip names no berth', () => {
    expect(firstFull(load({ rear: left(30) }), 0, garage(null), 'out')).toEqual({
      what: 'rear',
      grams: 30_000,
    });
  });

  it('[M13] the roof counts only for a kit that rides there', () => {
    expect(firstFull(load({ roof: left(5) }), 0, garage(2500), 'out')?.grams).toBe(500_000);
    expect(firstFull(load({ roof: left(5) }), 0, garage(2500, true), 'out')?.what).toBe('roof');
  });

  it('[M13] says a mass below the kit when a limit is already passed', () => {
    expect(firstFull(load({ gross: left(-12) }), 42_000, garage(2500), 'out')?.grams).toBe(30_000);
  });

  it('[M13] nothing limits an unknown trip', () => {
    expect(firstFull(load({}), 0, garage(2500), 'nowhere')).toBeNull();
  });
});
