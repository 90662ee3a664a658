import type { Result } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { garageFile } from '@waymend/garage/record/schema';
import { closeMuster, missingPieces } from '@waymend/garage/road/close-muster';
import { countInAllBut } from '@waymend/garage/road/muster';
import { describe, expect, it } from 'vitest';
import { openWith, seal, tick, tickAll } from '../../src/places/bags/muster/acts.ts';
import { musterBags } from '../../src/places/bags/muster/groups.ts';
import type { Things } from '../../src/places/bags/use-things.ts';

const DAY = '2026-03-04';
const SIZES = [8, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 21, 22, 24];

/** A roll of wrenches, a pouch for the first minutes, and what is in no bag: 31 pieces. */
const GARAGE: Garage = garageFile.parse({
  waymend: 1,
  name: 'test',
  vehicles: {
    ute: {
      name: 'Ute',
      wheelbaseMm: 2800,
      emptyFrontKg: 900,
      emptyRearKg: 800,
      ratedFrontKg: 1200,
      ratedRearKg: 1500,
      ratedGrossKg: 2600,
    },
  },
  berths: { drawer: { vehicle: 'ute', name: 'drawer', xMm: 2700 } },
  bags: { roll: { name: 'roll', kind: 'roll', berth: 'drawer' }, grab: { name: 'grab', firstGrab: true } },
  pockets: {
    second: { bag: 'roll', name: 'slot 2', order: 2, widthMm: 60, lengthMm: 200 },
    first: { bag: 'roll', name: 'slot 1', order: 1, widthMm: 60, lengthMm: 200 },
  },
  belongings: {
    ...Object.fromEntries(
      SIZES.map((size, n) => [
        `w${size}`,
        { name: `wrench ${size}`, bag: 'roll', pocket: n < 7 ? 'second' : 'first' },
      ]),
    ),
    torch: { name: 'torch', bag: 'grab', copies: 2 },
    gloves: { name: 'gloves', bag: 'grab' },
    bits: { name: 'bit set', bag: 'grab', parts: ['holder', 'bit 4'] },
    tape: { name: 'tape', is: 'TAPE', copies: 2 },
    straps: { name: 'strap', copies: 11 },
  },
});
const THINGS: Things = { tape: { name: 'tape', asNew: 5, outline: 'box' } };
const stockOf = (is: string) => (is === 'TAPE' ? 5 : null);

function ids(): (wish: string) => string {
  let n = 0;
  return (wish) => `${wish}-${++n}`;
}
function must(result: Result<Garage>): Garage {
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}
const everything = Object.entries(GARAGE.belongings).map(([belonging, { copies }]) => ({
  belonging,
  pieces: copies,
}));
const opened = () => must(openWith(GARAGE, { id: 'm', vehicle: 'ute', on: DAY }, everything, ids()));
const countOf = (garage: Garage, belonging: string): string => {
  const found = Object.entries(garage.counts).find(([, count]) => count.belonging === belonging);
  if (found === undefined) throw new Error(`${belonging} is not out`);
  return found[0];
};

describe('a muster by presses', () => {
  it('[Muster] counts in 31 pieces with one lost and one used up in at most 1.2 presses a piece, one by one', () => {
    let garage = opened();
    let presses = 0;
    let pieces = 0;
    for (const [id, { belonging, out }] of Object.entries(garage.counts)) {
      pieces += out;
      const parts = garage.belongings[belonging]?.parts ?? [];
      if (belonging === 'w13' || belonging === 'tape') {
        // The dialog, and what became of it.
        presses += 2;
        garage = must(tick(garage, id, belonging === 'tape' ? 'used' : 'lost', stockOf));
      } else {
        // A thing of several parts asks for them: one press more says that all are there.
        presses += parts.length > 0 ? 2 : 1;
        garage = must(tick(garage, id, 'back', stockOf));
      }
    }
    presses += 1;
    const closed = must(closeMuster(garage, 'm', DAY, stockOf, ids()));
    expect(pieces).toBe(31);
    expect(presses / pieces).toBeLessThanOrEqual(1.2);
    expect(closed.belongings['w13']?.copies).toBe(0);
    expect(closed.belongings['tape']?.copies).toBe(0);
    expect(closed.belongings['straps']?.copies).toBe(11);
  });

  it('[Muster] all but one is three presses, and what was left out still keeps it from closing', () => {
    const garage = must(countInAllBut(opened(), 'm', ['w22'], stockOf));
    expect(missingPieces(garage, 'm', stockOf).map(({ belonging }) => belonging)).toEqual(['w22']);
    const refused = closeMuster(garage, 'm', DAY, stockOf, ids());
    expect(refused.ok ? null : refused.error.message).toContain('wrench 22');
  });

  it('[Muster] a whole bag is back by one press and nothing else is', () => {
    const before = opened();
    const roll = musterBags(before, 'm', THINGS).find(({ bag }) => bag === 'roll');
    const counts = roll?.pockets.flatMap(({ rows }) => rows.map(({ id }) => id)) ?? [];
    const after = musterBags(must(tickAll(before, counts, stockOf)), 'm', THINGS);
    expect(after.map(({ bag, missing }) => [bag, missing])).toEqual([
      ['grab', 4],
      ['roll', 0],
      [null, 13],
    ]);
  });

  it('[Muster] a seal stands only for an earlier count that found all of it whole', () => {
    const first = seal(opened(), 'm', 'roll', ids());
    expect(first.ok ? null : first.error.id).toBe('bag-not-counted');
    const whole = must(countInAllBut(opened(), 'm', [], stockOf));
    const closed = must(closeMuster(whole, 'm', DAY, stockOf, ids()));
    const again = must(
      openWith(closed, { id: 'm2', vehicle: 'ute', on: '2026-03-05' }, everything, (wish) => `again-${wish}`),
    );
    const sealed = must(seal(again, 'm2', 'roll', (wish) => `sealed-${wish}`));
    const counted = Object.values(sealed.counts).filter(({ muster }) => muster === 'm2');
    expect(counted.filter(({ back }) => back > 0).map(({ belonging }) => belonging)).toEqual(
      SIZES.map((size) => `w${size}`),
    );
    expect(counted.length).toBe(everything.length);
  });

  it('[Muster] a second muster takes out only what the first left', () => {
    const wanted = [{ belonging: 'torch', pieces: 2 }];
    const one = must(
      openWith(GARAGE, { id: 'a', vehicle: 'ute', on: DAY }, [{ belonging: 'torch', pieces: 1 }], ids()),
    );
    const two = must(openWith(one, { id: 'b', vehicle: 'ute', on: DAY }, wanted, (wish) => `b-${wish}`));
    expect(two.counts['b-torch']?.out).toBe(1);
    const three = must(openWith(two, { id: 'c', vehicle: 'ute', on: DAY }, wanted, (wish) => `c-${wish}`));
    expect(Object.values(three.counts).filter(({ muster }) => muster === 'c')).toEqual([]);
  });
});

describe('the list of a muster', () => {
  it('has first-grab bags first, pockets in their order, what is in no bag last', () => {
    const bags = musterBags(opened(), 'm', THINGS);
    expect(bags.map(({ bag, berth, out }) => [bag, berth, out])).toEqual([
      ['grab', null, 4],
      ['roll', 'drawer', 14],
      [null, null, 13],
    ]);
    expect(bags[1]?.pockets.map(({ name }) => name)).toEqual(['slot 1', 'slot 2']);
  });

  it('counts used jobs of a stock: half a tin used does not let it stay away', () => {
    const garage = opened();
    const used = musterBags({ ...garage, counts: { ...garage.counts, ...withUsed(garage, 5) } }, 'm', THINGS);
    const tape = used
      .flatMap(({ pockets }) => pockets.flatMap(({ rows }) => rows))
      .find(({ name }) => name === 'tape');
    // Two rolls of five: five used empties one; the other has to come back.
    expect(tape?.missing).toBe(1);
  });
});

function withUsed(garage: Garage, used: number): Garage['counts'] {
  const id = countOf(garage, 'tape');
  const count = garage.counts[id];
  return count === undefined ? {} : { [id]: { ...count, used } };
}
