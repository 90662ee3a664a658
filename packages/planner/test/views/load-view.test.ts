import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { LoadMove } from '@waymend/planner/views/load-moves';
import { loadMoves } from '@waymend/planner/views/load-moves';
import type { LoadView } from '@waymend/planner/views/load-view';
import { loadView, tightestOf } from '@waymend/planner/views/load-view';
import { weighIn } from '@waymend/planner/views/weigh-in';
import type { Garage } from '@waymend/garage/record/schema';
import { describe, expect, it } from 'vitest';
import { wagon } from './garage.ts';

const { loadIndex } = SHIPPED_TRADE;
const LOADS = {
  loads: {
    water: { name: 'Water', kg: 60, kind: 'water', berth: 'rear-door' },
    fuel: { name: 'Fuel', kg: 80, kind: 'fuel', xMm: 2400 },
    tent: { name: 'Tent', kg: 40, kind: 'camping', berth: 'roof' },
  },
  trips: {
    trip: {
      name: 'Trip',
      vehicle: 'live-axle-wagon',
      people: ['ann'],
      days: 5,
      kitBerth: 'drawer-left',
      loads: ['water', 'fuel', 'tent'],
    },
  },
  belongings: {
    jack: { is: 'JB-4', grams: 5000, berth: 'cab-floor' },
    box: { name: 'box', set: { carry: 'whole', caseGrams: 1500 } },
    bar: { name: 'bar', grams: 2000, inside: 'box' },
  },
};
const KIT = [
  { id: 'jack', name: 'Jack', grams: 5000 },
  { id: 'bar', name: 'Bar', grams: 2000 },
];

function look(garage: Garage, kit = KIT): LoadView {
  const view = loadView(garage, 'trip', kit, loadIndex);
  if (!view.ok) throw new Error(view.error.message);
  return view.value;
}

describe('the side view of a trip', () => {
  it('[M13] weighs pieces in their berths and the case of a whole set where the kit rides', () => {
    const { load } = look(wagon(LOADS));
    // By hand, kg x mm over the wheelbase: driver, water, fuel, tent, jack, and bar with its case in the drawer.
    const moments = 80 * 1300 + 60 * 3650 + 80 * 2400 + 40 * 2000 + 5 * 1750 + 3.5 * 3100;
    expect(load.rear.kg).toBeCloseTo(1160 + moments / 2850, 2);
    expect(load.gross.kg).toBe(2320 + 80 + 180 + 8.5);
    expect(load.berths.find((b) => b.id === 'drawer-left')?.kg).toBe(3.5);
  });

  it('[M13] puts every thing at one spot, and its spots weigh what the berths do', () => {
    const view = look(wagon(LOADS));
    const seen = view.spots.flatMap((s) => s.aboard.map((a) => a.id));
    expect(seen.sort()).toEqual(['ann', 'bar', 'box', 'fuel', 'jack', 'tent', 'water']);
    for (const spot of view.spots)
      expect(spot.aboard.reduce((sum, a) => sum + a.kg, 0)).toBeCloseTo(spot.kg, 3);
    expect(view.spots.find((s) => !s.berth)?.xMm).toBe(2400);
    expect(view.centreMm).toBe(Math.round((view.load.rear.kg / view.load.gross.kg) * 2850));
  });

  it('[M13] names the limit with the least room, and a berth or roof only when it is over', () => {
    const rear = tightestOf({
      front: { kg: 1, limitKg: 100, marginKg: 99 },
      rear: { kg: 71, limitKg: 100, marginKg: 29 },
      gross: { kg: 72, limitKg: 200, marginKg: 128 },
      roof: { kg: 70, limitKg: 75, marginKg: 5 },
      tyres: null,
      berths: [{ id: 'b', name: 'Box', kg: 9, limitKg: 10, marginKg: 1 }],
    });
    expect(rear).toEqual({ of: 'rear', name: null, marginKg: 29 });
    const over = look(
      wagon({ ...LOADS, loads: { ...LOADS.loads, water: { ...LOADS.loads.water, kg: 70 } } }),
    );
    expect(over.tightest).toEqual({ of: 'berth', name: 'Rear door', marginKg: -40 });
  });

  it('refuses a trip that is not there', () => {
    expect(loadView(wagon(), 'none', [], loadIndex)).toMatchObject({
      ok: false,
      error: { id: 'trip-unknown' },
    });
  });
});

/** What a move does to the record, written here a second time. */
function moved(garage: Garage, { mover, to }: LoadMove): Garage {
  if (mover.kind === 'load') {
    const { xMm: _, ...load } = garage.loads[mover.id] ?? { name: '', kg: 0, kind: 'other' as const };
    return { ...garage, loads: { ...garage.loads, [mover.id]: { ...load, berth: to } } };
  }
  if (mover.kind === 'belonging') {
    const before = garage.belongings[mover.id];
    return before === undefined
      ? garage
      : { ...garage, belongings: { ...garage.belongings, [mover.id]: { ...before, berth: to } } };
  }
  const trip = garage.trips['trip'];
  return trip === undefined ? garage : { ...garage, trips: { trip: { ...trip, kitBerth: to } } };
}

describe('moves between berths', () => {
  it('[M13] promise what the whole load, worked out anew, then says', () => {
    const garage = wagon(LOADS);
    const before = look(garage);
    const moves = loadMoves(before).filter((m) => m.mover.kind !== 'ten');
    // Water, tent, jack, bar and the kit (bar and case) can go to each other berth of eight; fuel and people stay.
    const names = [...new Set(moves.map((m) => m.name))].sort();
    expect(names).toEqual(['Bar', 'Jack', 'Tent', 'Water', 'box', 'the kit']);
    expect(moves.some((m) => m.name === 'Fuel' || m.name === 'Ann')).toBe(false);
    expect(moves.length).toBeGreaterThan(20);
    for (const move of moves) {
      if (move.mover.kind === 'belonging' && move.mover.id === 'box') continue;
      const after = look(moved(garage, move)).load;
      expect(after.rear.kg - before.load.rear.kg, `${move.name} to ${move.to}`).toBeCloseTo(move.rearKg, 2);
      expect(after.front.kg - before.load.front.kg).toBeCloseTo(move.frontKg, 2);
      const passed = [after.front, after.rear, after.roof, ...after.berths].some((m, n) => {
        const old = [before.load.front, before.load.rear, before.load.roof, ...before.load.berths][n];
        return (m?.marginKg ?? 0) < -0.001 && (m?.marginKg ?? 0) < (old?.marginKg ?? 0) - 0.001;
      });
      expect(move.blocked !== null, `${move.name} to ${move.to}`).toBe(passed);
    }
  });

  it('[M13] 10 kg from the rear door to the cab floor takes 6.7 kg off the rear axle', () => {
    const move = loadMoves(look(wagon(LOADS))).find(
      (m) => m.mover.kind === 'ten' && m.from === 'rear-door' && m.to === 'cab-floor',
    );
    expect(move?.rearKg).toBeCloseTo((-10 * (3650 - 1750)) / 2850, 6);
    expect(move?.forwardMm).toBe(1900);
    expect(move?.blocked).toBeNull();
  });

  it('[M13] says by how much a berth would be over', () => {
    const move = loadMoves(look(wagon(LOADS))).find((m) => m.name === 'Water' && m.to === 'cab-floor');
    // 5 kg of jack are there already, of 40.
    expect(move?.blocked).toEqual({ what: 'berth', overKg: 25 });
  });
});

describe('a weigh-in', () => {
  it('[M13] gives back the empty axles from readings with everything aboard', () => {
    const view = look(wagon(LOADS));
    const all = new Set(view.spots.flatMap((s) => s.aboard.map((a) => a.id)));
    const weighed = weighIn(view, view.load.front.kg, view.load.rear.kg, all);
    expect(weighed).toEqual({ ok: true, value: { emptyFrontKg: 1160, emptyRearKg: 1160, aboardKg: 268.5 } });
  });

  it('[M13] counts nothing that was not aboard, and refuses readings that leave nothing', () => {
    const view = look(wagon(LOADS));
    expect(weighIn(view, 1200, 1180, new Set())).toMatchObject({
      value: { emptyFrontKg: 1200, emptyRearKg: 1180, aboardKg: 0 },
    });
    expect(weighIn(view, 20, 30, new Set(['water', 'ann']))).toMatchObject({
      error: { id: 'weighed-less-than-nothing' },
    });
  });
});
