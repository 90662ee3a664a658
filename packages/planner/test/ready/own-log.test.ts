import type { Feature } from '@waymend/catalogue/shape/words';
import { FAILURE_GROUPS } from '@waymend/catalogue/failures/groups';
import type { Garage } from '@waymend/garage/record/schema';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildScene } from '../../src/scene/build-scene.ts';
import { ownLog } from '../../src/scene/own-log.ts';
import { SHIPPED_TRADE } from '../../src/shipped-trade.ts';
import { unused } from './demo.ts';

let base: Garage;
beforeAll(() => {
  base = unused();
});

const FLAT = { vehicle: 'packer', failure: 'tread-puncture', on: '2026-05-01', ended: 'mended' as const };
const tyreFailure = SHIPPED_TRADE.failures.find((f) => f.group === 'tyre')?.id ?? '';

/** The demo's vehicle without anything that multiplies its rates, read at two distances. */
function read(breakdowns: readonly number[], toKm = 197_000): Garage {
  const packer = base.vehicles['packer'];
  if (packer === undefined) throw new Error('the demo has changed');
  const { ageYears: _, odometerKm: __, batteryAgeYears: ___, ...plain } = packer;
  return {
    ...base,
    vehicles: {
      ...base.vehicles,
      packer: { ...plain, care: 'average', recentWork: [], addedCircuits: 0, liftMm: 0, tyreOversizePct: 0 },
    },
    readings: {
      a: { vehicle: 'packer', km: 187_000, on: '2026-01-01' },
      b: { vehicle: 'packer', km: toKm, on: '2026-09-01' },
    },
    breakdowns: Object.fromEntries(
      breakdowns.map((atKm, n) => [`b${n}`, { ...FLAT, failure: tyreFailure, atKm }]),
    ),
  };
}

function logOf(garage: Garage) {
  const vehicle = garage.vehicles['packer'];
  if (vehicle === undefined) throw new Error('the demo has changed');
  return ownLog(garage, 'packer', vehicle, new Set<Feature>(), SHIPPED_TRADE);
}

function eventsOf(garage: Garage, group: string): number {
  const built = buildScene(garage, 'loop', SHIPPED_TRADE);
  if (!built.ok) throw new Error(built.error.message);
  return built.value.rates.groups.find((g) => g.group === group)?.events ?? 0;
}

describe('what the own log teaches', () => {
  it('[M1] nothing without a breakdown: rates stay as they were to the last bit', () => {
    const quiet = read([]);
    expect(logOf(quiet).learned).toEqual([]);
    const readingless = { ...quiet, readings: {} };
    for (const { id } of FAILURE_GROUPS) expect(eventsOf(quiet, id)).toBe(eventsOf(readingless, id));
  });

  it('[M1] two flats in 10,000 km on sealed roads: (1.8 + 2) / (1.8 / 0.15 + 1) a 10,000 km, by hand 0.292', () => {
    const { km, learned } = logOf(read([190_000, 195_000]));
    expect(km).toEqual({ sealed: 10_000, gravel: 0, corrugated: 0, rock: 0, sand: 0 });
    const tyre = learned.find((l) => l.group === 'tyre');
    expect(tyre).toMatchObject({ events: 2, shape: 1.8 });
    expect(tyre?.expected).toBeCloseTo(0.15, 9);
    expect(0.15 * (tyre?.posterior.mean ?? 0)).toBeCloseTo(3.8 / (1.8 / 0.15 + 1), 9);
  });

  it('[M1] the planner goes by it: the trip expects so many times more flats, and a little fewer of the rest', () => {
    const with2 = read([190_000, 195_000]);
    const factor = logOf(with2).learned.find((l) => l.group === 'tyre')?.posterior.mean ?? 0;
    const without = { ...with2, breakdowns: {} };
    expect(factor).toBeGreaterThan(1.9);
    expect(eventsOf(with2, 'tyre') / eventsOf(without, 'tyre')).toBeCloseTo(factor, 9);
    expect(eventsOf(with2, 'suspension')).toBeLessThan(eventsOf(without, 'suspension'));
  });

  it('[M1] a breakdown before the first reading teaches nothing, nor do breakdowns without a distance', () => {
    const early = read([186_000, 190_000]);
    expect(logOf(early)).toMatchObject({ outside: 1 });
    expect(logOf(early).learned.find((l) => l.group === 'tyre')?.events).toBe(1);
    const distanceless = { ...early, readings: {} };
    expect(
      logOf({ ...distanceless, breakdowns: { b0: { ...FLAT, failure: tyreFailure, atKm: 190_000 } } }),
    ).toEqual({
      km: null,
      learned: [],
      outside: 1,
    });
  });

  it('[M1] a trip that was driven gives its own surfaces, and the rest counts as sealed', () => {
    const garage = read([190_000]);
    const driven = {
      ...garage,
      uses: { u: { trip: 'loop', belonging: 'p-wheel', said: 'used' as const, times: 1 } },
    };
    expect(logOf(driven).km).toEqual({
      sealed: 10_000 - 1_980,
      gravel: 700,
      corrugated: 780,
      rock: 120,
      sand: 380,
    });
    const short = { ...read([187_100], 188_600), uses: driven.uses };
    expect(logOf(short).km?.gravel).toBeCloseTo(700 * (1_600 / 3_200), 9);
  });

  it('[M1] a replaced odometer goes on counting', () => {
    const garage = read([190_000]);
    const readings = {
      ...garage.readings,
      b: { vehicle: 'packer', km: 0, on: '2026-09-01', oldKm: 197_000 },
      c: { vehicle: 'packer', km: 3_000, on: '2026-10-01' },
    };
    expect(logOf({ ...garage, readings }).km?.sealed).toBe(13_000);
  });
});
