import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KitLoad, LoadInput } from '../../src/loading/load-input.ts';
import { loadOf } from '../../src/loading/load.ts';
import { berthRoom, loadRowsOf } from '../../src/loading/load-rows.ts';
import { grams, kilograms, metres } from '../../src/quantity/units.ts';

const input: LoadInput = {
  wheelbase: metres(3),
  emptyFront: kilograms(1150),
  emptyRear: kilograms(1000),
  ratedFront: kilograms(1400),
  ratedRear: kilograms(1500),
  ratedGross: kilograms(2800),
  ratedRoof: kilograms(80),
  tyre: { loadIndex: 105, passenger: false },
  loadIndexTable: [{ index: 105, kg: 925 }],
  berths: [
    { id: 'behind', name: 'Behind the axle', x: metres(3.6), limit: kilograms(150), roof: false },
    { id: 'cab', name: 'Under the seat', x: metres(1.2), roof: false },
    { id: 'rack', name: 'Rack', x: metres(1.5), roof: true },
  ],
  fixed: [{ id: 'w', name: 'Water', mass: kilograms(60), kind: 'cargo', berth: 'behind' }],
  kit: [],
  kitBerth: 'behind',
};

function rows() {
  const result = loadRowsOf(input);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

describe('load rows of the choosing problem', () => {
  it('[M13] a berth behind the rear axle weighs more than itself on the rear and less than nothing on the front', () => {
    const rear = rows().find((r) => r.id === 'rear');
    const front = rows().find((r) => r.id === 'front');
    expect(rear?.factor).toEqual({ behind: 1.2, cab: 0.4, rack: 0.5 });
    expect(front?.factor.behind).toBeCloseTo(-0.2, 9);
    expect(rear?.elsewhere).toBe(1.2);
    // 1,500 - 1,000 - 60 x 1.2 = 428 kg of room.
    expect(rear?.grams).toBe(428_000);
  });

  it('[M13] rows say the same as the loads themselves, for any kit', () => {
    const berth = fc.constantFrom('behind', 'cab', 'rack', null);
    const piece = fc.tuple(fc.integer({ min: 1, max: 90_000 }), berth);
    const lines = (kit: readonly KitLoad[]) => {
      const load = loadOf({ ...input, kit });
      if (!load.ok) throw new Error(load.error.message);
      const { front, rear, gross, roof, tyresFront, tyresRear } = load.value;
      return { front, rear, gross, roof, 'tyres-front': tyresFront, 'tyres-rear': tyresRear };
    };
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 10 }), (things) => {
        const kit = things.map(([g, b], n) => ({ id: `k${n}`, grams: grams(g), berth: b }));
        const loads = lines(kit);
        for (const row of rows()) {
          const used = kit.reduce(
            (sum, k) =>
              sum + k.grams * (k.berth === null ? row.elsewhere : (row.factor[k.berth] ?? row.elsewhere)),
            0,
          );
          const margin = loads[row.id as keyof typeof loads]?.marginKg ?? Number.NaN;
          expect((row.grams - used) / 1000).toBeCloseTo(margin, 2);
        }
      }),
      { numRuns: 100 },
    );
    expect(rows().map((r) => r.id)).toEqual(['front', 'rear', 'tyres-front', 'tyres-rear', 'gross', 'roof']);
  });

  it('[M13] an axle already over its rating gives a row with no room, so that the clash names it', () => {
    const result = loadRowsOf({ ...input, ratedRear: kilograms(1000) });
    const rear = result.ok ? result.value.find((r) => r.id === 'rear') : undefined;
    expect(rear?.grams).toBe(-72_000);
  });

  it('[M13] room in a berth is its limit less what already rides there', () => {
    const load = loadOf(input);
    expect(load.ok ? berthRoom(load.value) : null).toEqual([{ id: 'behind', grams: 90_000 }]);
  });
});
