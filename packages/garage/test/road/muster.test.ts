import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeMuster, missingPieces } from '../../src/road/close-muster.ts';
import {
  countIn,
  countInAllBut,
  countOut,
  countSealedBag,
  openMuster,
  recount,
} from '../../src/road/muster.ts';
import type { Garage } from '../../src/record/schema.ts';
import { ids, refusal, shed, stockOf, value } from './road-garage.ts';

const DAY = '2026-03-04';

function opened(...out: readonly (readonly [string, number])[]): Garage {
  return value(
    openMuster(shed(), {
      id: 'm',
      vehicle: 'ute',
      on: DAY,
      job: 'WT-01',
      out: out.map(([belonging, pieces]) => ({ id: `c-${belonging}`, belonging, pieces })),
    }),
  );
}

const close = (garage: Garage) => closeMuster(garage, 'm', DAY, stockOf, ids());

describe('counting out', () => {
  it('refuses more pieces than there are, also when another muster has some of them', () => {
    const garage = opened(['wrench', 2]);
    expect(refusal(countOut(garage, 'm', { id: 'x', belonging: 'wrench', pieces: 2 }))).toEqual([
      'count-too-many',
      'Only 1 of wrench can go out; 2 were asked for',
    ]);
    const second = openMuster(garage, {
      id: 'm2',
      vehicle: 'ute',
      on: DAY,
      out: [{ id: 'y', belonging: 'wrench', pieces: 2 }],
    });
    expect(refusal(second)[0]).toBe('count-too-many');
    expect(
      value(countOut(garage, 'm', { id: 'x', belonging: 'wrench', pieces: 1 })).counts['c-wrench']?.out,
    ).toBe(3);
  });

  it('refuses what is not there, negative and broken numbers, and an id that is taken', () => {
    const garage = opened();
    expect(refusal(countOut(garage, 'm', { id: 'x', belonging: 'hammer', pieces: 1 }))[0]).toBe(
      'reference-unknown',
    );
    expect(refusal(countOut(garage, 'm', { id: 'x', belonging: 'wrench', pieces: -1 }))[0]).toBe(
      'count-negative',
    );
    expect(refusal(countOut(garage, 'm', { id: 'x', belonging: 'wrench', pieces: 0.5 }))[0]).toBe(
      'count-not-whole',
    );
    expect(refusal(openMuster(garage, { id: 'm', vehicle: 'ute', on: DAY, out: [] }))[0]).toBe('id-taken');
    expect(refusal(openMuster(garage, { id: 'Bad id', vehicle: 'ute', on: DAY, out: [] }))[0]).toBe(
      'id-unusable',
    );
  });
});

describe('counting in', () => {
  it('goes piece by piece and refuses more than went out', () => {
    let garage = opened(['wrench', 2]);
    garage = value(countIn(garage, 'c-wrench', { back: 1 }, stockOf));
    garage = value(countIn(garage, 'c-wrench', { lost: 1 }, stockOf));
    expect(garage.counts['c-wrench']).toMatchObject({ back: 1, lost: 1 });
    expect(refusal(countIn(garage, 'c-wrench', { back: 1 }, stockOf))).toEqual([
      'count-over',
      '2 of wrench went out, so 3 cannot be accounted for; count again',
    ]);
  });

  it('refuses negative steps and counts, but lets a count be said anew', () => {
    const garage = value(countIn(opened(['wrench', 2]), 'c-wrench', { back: 2 }, stockOf));
    expect(refusal(countIn(garage, 'c-wrench', { back: -1 }, stockOf))[0]).toBe('count-negative');
    expect(refusal(recount(garage, 'c-wrench', { back: -1 }, stockOf))[0]).toBe('count-negative');
    expect(refusal(recount(garage, 'c-wrench', { used: Number.NaN, back: 0 }, stockOf))[0]).toBe(
      'count-negative',
    );
    expect(
      value(recount(garage, 'c-wrench', { back: 1, lost: 1 }, stockOf)).counts['c-wrench'],
    ).toMatchObject({ back: 1, lost: 1 });
  });

  it('takes "all but" a few in one step, and refuses an exception that did not go out', () => {
    const garage = value(
      countIn(opened(['wrench', 3], ['pliers', 1], ['belt', 1]), 'c-wrench', { lost: 1 }, stockOf),
    );
    const after = value(countInAllBut(garage, 'm', ['pliers'], stockOf));
    expect(after.counts['c-wrench']).toMatchObject({ back: 2, lost: 1 });
    expect(missingPieces(after, 'm', stockOf)).toEqual([
      { count: 'c-pliers', belonging: 'pliers', pieces: 1 },
    ]);
    expect(refusal(countInAllBut(garage, 'm', ['oil'], stockOf))[0]).toBe('count-unknown');
  });
});

describe('a sealed bag', () => {
  it('counts in one step only what an earlier closed count found whole', () => {
    expect(refusal(countSealedBag(opened(), 'm', 'roll', (b) => `s-${b}`))[0]).toBe('bag-not-counted');
    const first = value(close(value(countInAllBut(opened(['wrench', 3], ['pliers', 1]), 'm', [], stockOf))));
    const second = value(openMuster(first, { id: 'm2', vehicle: 'ute', on: '2026-03-05', out: [] }));
    const sealed = value(countSealedBag(second, 'm2', 'roll', (b) => `s-${b}`));
    expect(sealed.counts['s-wrench']).toMatchObject({ muster: 'm2', out: 3, back: 3 });
    expect(sealed.counts['s-pliers']).toMatchObject({ out: 1, back: 1 });
    expect(sealed.counts['s-belt']).toBeUndefined();
  });

  it('is not believed after a count that left a piece out', () => {
    const half = value(close(value(countInAllBut(opened(['wrench', 2], ['pliers', 1]), 'm', [], stockOf))));
    const second = value(openMuster(half, { id: 'm2', vehicle: 'ute', on: '2026-03-05', out: [] }));
    const [id, words] = refusal(countSealedBag(second, 'm2', 'roll', (b) => `s-${b}`));
    expect(id).toBe('bag-not-counted');
    expect(words).toContain('wrench');
    expect(words).not.toContain('pliers');
  });
});

describe('closing', () => {
  it('is refused while pieces are unaccounted for, and says which', () => {
    const garage = value(countIn(opened(['wrench', 3], ['pliers', 1]), 'c-wrench', { back: 1 }, stockOf));
    expect(refusal(close(garage))).toEqual([
      'muster-unaccounted',
      'Not yet accounted for: 2 of wrench, pliers; find each, or say that it is lost, damaged or used',
    ]);
  });

  it('takes what is lost and used off the record and sets what is damaged aside, at once', () => {
    let garage = opened(['wrench', 3], ['pliers', 1]);
    garage = value(countIn(garage, 'c-wrench', { back: 1, lost: 1, damaged: 1 }, stockOf));
    garage = value(countIn(garage, 'c-pliers', { damaged: 1 }, stockOf));
    const { belongings, musters } = value(close(garage));
    expect(belongings['wrench']).toMatchObject({ copies: 1, state: 'ready' });
    expect(belongings['wrench-1']).toMatchObject({ is: 'CW-13', copies: 1, state: 'damaged', bag: 'roll' });
    expect(belongings['pliers']).toMatchObject({ copies: 1, state: 'damaged' });
    expect(musters['m']?.closedOn).toBe(DAY);
  });

  it('keeps what is wholly lost on the record, with no copies, so that it can be replaced', () => {
    const garage = value(countIn(opened(['pliers', 1]), 'c-pliers', { lost: 1 }, stockOf));
    expect(value(close(garage)).belongings['pliers']?.copies).toBe(0);
  });

  it('counts stock by jobs or litres: an emptied piece need not come back, a begun one becomes its own', () => {
    let garage = opened(['belt', 1], ['oil', 2]);
    garage = value(countIn(garage, 'c-belt', { used: 1 }, stockOf));
    garage = value(countIn(garage, 'c-oil', { used: 5.5, back: 1 }, stockOf));
    const { belongings } = value(close(garage));
    expect(belongings['belt']).toMatchObject({ copies: 1 });
    expect(belongings['belt']?.stock).toBeUndefined();
    expect(belongings['oil']).toMatchObject({ copies: 1, stock: 2.5 });
    const little = value(countIn(opened(['oil', 2]), 'c-oil', { used: 1, back: 1 }, stockOf));
    expect(refusal(close(little))[0]).toBe('muster-unaccounted');
    const most = value(countIn(opened(['oil', 2]), 'c-oil', { used: 1, back: 2 }, stockOf));
    expect(value(close(most)).belongings).toMatchObject({
      oil: { copies: 1 },
      'oil-1': { copies: 1, stock: 3 },
    });
    expect(refusal(countIn(opened(['oil', 1]), 'c-oil', { used: 4.5 }, stockOf))[0]).toBe('count-over');
  });

  it('marks a piece whose parts are missing as unproven', () => {
    const garage = value(
      countIn(opened(['pliers', 1]), 'c-pliers', { back: 1, missingParts: ['spring'] }, stockOf),
    );
    expect(value(close(garage)).belongings['pliers']?.state).toBe('unproven');
  });

  it('happens once, and not before the muster was opened', () => {
    const garage = value(countInAllBut(opened(['pliers', 1]), 'm', [], stockOf));
    expect(refusal(closeMuster(garage, 'm', '2026-03-03', stockOf, ids()))[0]).toBe('date-before');
    expect(refusal(close(value(close(garage))))[0]).toBe('muster-closed');
    expect(refusal(countOut(value(close(garage)), 'm', { id: 'x', belonging: 'belt', pieces: 1 }))[0]).toBe(
      'muster-closed',
    );
  });

  it('never makes or loses pieces: what is sound, damaged, lost and used adds up, whatever the counts', () => {
    const n = fc.integer({ min: 0, max: 3 });
    fc.assert(
      fc.property(n, n, n, n, (back, lost, damaged, used) => {
        const garage = opened(['wrench', 3]);
        const counted = countIn(garage, 'c-wrench', { back, lost, damaged, used }, stockOf);
        expect(counted.ok).toBe(back + lost + damaged + used <= 3);
        if (!counted.ok) return;
        const closed = close(counted.value);
        expect(closed.ok).toBe(back + lost + damaged + used === 3);
        if (!closed.ok) return;
        const wrenches = Object.values(closed.value.belongings).filter(({ is }) => is === 'CW-13');
        const pieces = (state: string) =>
          wrenches.reduce((sum, w) => sum + (w.state === state ? w.copies : 0), 0);
        expect([pieces('ready'), pieces('damaged')]).toEqual([back, damaged]);
      }),
    );
  });
});
