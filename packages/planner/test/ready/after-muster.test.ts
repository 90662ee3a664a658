import type { Garage } from '@waymend/garage/record/schema';
import { closeMuster } from '@waymend/garage/road/close-muster';
import { countIn, openMuster } from '@waymend/garage/road/muster';
import { beforeAll, describe, expect, it } from 'vitest';
import { prepare } from '../../src/plan/plan-trip.ts';
import { calendarEntries } from '../../src/ready/calendar-entries.ts';
import { careDues } from '../../src/ready/care-dues.ts';
import { changedChance } from '../../src/ready/changed-chance.ts';
import { piecesForJob } from '../../src/ready/job-pieces.ts';
import { openRepairs } from '../../src/ready/repairs-open.ts';
import { restockList, stockOf } from '../../src/ready/restock.ts';
import { SHIPPED_TRADE } from '../../src/shipped-trade.ts';
import { unused } from './demo.ts';

let garage: Garage;
let carried: readonly string[] = [];
beforeAll(() => {
  garage = unused();
  const made = prepare(garage, 'loop', SHIPPED_TRADE);
  if (!made.ok) throw new Error(made.error.message);
  carried = made.value.reading.pieces.flatMap((p) => (p.owned ? [p.id] : []));
});

const STOCK = stockOf(SHIPPED_TRADE);

/** A muster in which one piece goes out and meets its fate. */
function mustered(belonging: string, fate: 'back' | 'lost' | 'damaged' | 'used'): Garage {
  const opened = openMuster(garage, {
    id: 'm',
    vehicle: 'packer',
    trip: 'loop',
    on: '2026-12-08',
    out: [{ id: 'c', belonging, pieces: 1 }],
  });
  if (!opened.ok) throw new Error(opened.error.message);
  const counted = countIn(opened.value, 'c', { [fate]: 1 }, STOCK);
  if (!counted.ok) throw new Error(counted.error.message);
  const closed = closeMuster(counted.value, 'm', '2026-12-08', STOCK, (wish) => `${wish}-x`);
  if (!closed.ok) throw new Error(closed.error.message);
  return closed.value;
}

function change(after: Garage) {
  const changed = changedChance(garage, after, 'loop', carried, SHIPPED_TRADE);
  if (!changed.ok) throw new Error(changed.error.message);
  return changed.value;
}

describe('what a closed muster changed', () => {
  it('[M8] is nothing when every piece is back', () => {
    const { before, after, weaker } = change(mustered('p-wheel', 'back'));
    expect(after).toBe(before);
    expect(weaker).toEqual([]);
  });

  it('[M5] the spare wheel gone: flats are answered less well, and the chance falls by what that costs', () => {
    const { before, after, weaker, words } = change(mustered('p-wheel', 'used'));
    expect(after).toBeLessThan(before - 0.01);
    expect(weaker.length).toBeGreaterThan(0);
    for (const w of weaker) expect(w.after).toBeLessThan(w.before);
    // ln of the ratio of the chances is the sum over failures of expected x lost chance (M5); shared spares make it larger still.
    const nepers = weaker.reduce((sum, w) => sum + w.expected * (w.before - w.after), 0);
    expect(Math.log(before / after)).toBeLessThanOrEqual(nepers + 1e-9);
    expect(words).toContain('outside help');
  });

  it('[M5] a damaged piece counts for as little as a lost one', () => {
    expect(change(mustered('p-wheel', 'damaged')).after).toBe(change(mustered('p-wheel', 'lost')).after);
  });
});

describe('what is put back after a trip', () => {
  it('names what was lost, used and damaged with what to buy, once and for this trip only', () => {
    const used = restockList(mustered('p-wheel', 'used'), 'loop', SHIPPED_TRADE).filter(
      (r) => r.why === 'used',
    );
    expect(used).toHaveLength(1);
    expect(used[0]).toMatchObject({ belonging: 'p-wheel', is: 'P-WHEEL', amount: 1 });
    expect(used[0]?.cents ?? 0).toBeGreaterThan(0);
    const damaged = restockList(mustered('p-wheel', 'damaged'), 'loop', SHIPPED_TRADE).find(
      (r) => r.why === 'damaged',
    );
    expect(damaged?.cents).toBeNull();
    expect(
      restockList(mustered('p-wheel', 'used'), 'other', SHIPPED_TRADE).some((r) => r.why === 'used'),
    ).toBe(false);
    expect(
      restockList(mustered('p-wheel', 'back'), 'loop', SHIPPED_TRADE).some((r) => r.why === 'lost'),
    ).toBe(false);
  });

  it('knows begun stock and wishes', () => {
    const wished = {
      ...garage,
      uses: { u: { trip: 'loop', thing: 'SK3-10', said: 'wished-for' as const, times: 2 } },
      belongings: { ...garage.belongings, ...beltBegun(garage) },
    };
    const list = restockList(wished, 'loop', SHIPPED_TRADE);
    expect(list.find((r) => r.why === 'wished-for')).toMatchObject({
      is: 'SK3-10',
      belonging: null,
      amount: 1,
    });
    expect(list.find((r) => r.belonging === 'belt')).toMatchObject({ why: 'begun', amount: 0.75 });
  });
});

describe('the pieces of a card', () => {
  it('[M4] of a wheel change: what undoes, raises, holds and replaces, and nothing that is not carried', () => {
    const made = prepare(garage, 'loop', SHIPPED_TRADE);
    if (!made.ok) throw new Error(made.error.message);
    const pieces = piecesForJob(made.value, new Set(carried), 'WT-01').map((p) => p.belonging);
    expect(pieces.length).toBeGreaterThanOrEqual(5);
    for (const expected of ['p-wheel', 'jbase']) expect(pieces).toContain(expected);
    const wheelless = new Set(carried.filter((id) => id !== 'p-wheel'));
    expect(piecesForJob(made.value, wheelless, 'WT-01').map((p) => p.belonging)).not.toContain('p-wheel');
    expect(piecesForJob(made.value, new Set(carried), 'XX-99')).toEqual([]);
  });
});

describe('repairs and the calendar', () => {
  const hose = {
    vehicle: 'packer',
    job: 'CO-01',
    expedient: SHIPPED_TRADE.jobs.find((j) => j.id === 'CO-01')?.expedients[0]?.id ?? '',
    on: '2026-11-20',
    atKm: 187_000,
    lasts: 'temporary' as const,
    trustKm: 50,
    speedKmh: 60,
    lookAgainKm: [5, 20],
  };

  it('open ones carry their limits; mended ones and those of other vehicles ask for nothing', () => {
    const open = { ...garage, repairs: { h: hose } };
    expect(openRepairs(open, 'packer', SHIPPED_TRADE, 187_030)).toMatchObject([
      { id: 'h', nextLookKm: 187_005, lookInKm: -25, trustLeftKm: 20, speedKmh: 60 },
    ]);
    expect(
      openRepairs(
        { ...garage, repairs: { h: { ...hose, mendedOn: '2026-11-24' } } },
        'packer',
        SHIPPED_TRADE,
      ),
    ).toEqual([]);
    expect(openRepairs(open, 'cart', SHIPPED_TRADE)).toEqual([]);
  });

  it('each due day and look is one entry with an id of its own; what is overdue stands on the day of asking', () => {
    const open = { ...garage, repairs: { h: hose } };
    const ask = { today: '2026-11-25', leaveOn: '2026-12-05', days: 16 };
    const dues = careDues(open, Object.keys(open.belongings), ask, SHIPPED_TRADE);
    const repairs = openRepairs(open, 'packer', SHIPPED_TRADE, 187_000);
    const entries = calendarEntries(dues, repairs, { ...ask, kmPerDay: 2 });
    expect(new Set(entries.map((e) => e.id)).size).toBe(entries.length);
    expect(entries.find((e) => e.id.startsWith('look-h'))?.on).toBe('2026-12-07');
    for (const { on } of entries) expect(on >= '2026-11-25').toBe(true);
    const late = calendarEntries([], openRepairs(open, 'packer', SHIPPED_TRADE, 187_030), {
      ...ask,
      kmPerDay: 2,
    });
    expect(late.map((e) => e.on)).toEqual(['2026-11-25']);
  });
});

/** The spare wheel's record as that of a set of belts of which a quarter of a job is left. */
function beltBegun({ belongings }: Garage): Garage['belongings'] {
  const wheel = belongings['p-wheel'];
  if (wheel === undefined) throw new Error('the demo has changed');
  return { belt: { ...wheel, is: 'P-BELT', stock: 0.25 } };
}
