import { describe, expect, it } from 'vitest';
import { addDays, addMonths, addYears, dayNumber, dayOf, daysBetween } from '../../src/caring/calendar.ts';
import type { CareRuleFacts, CareThing, CareTime } from '../../src/caring/care-input.ts';
import type { CareDue } from '../../src/caring/due.ts';
import { duesOf } from '../../src/caring/due.ts';
import { readinessOf } from '../../src/caring/readiness.ts';
import type { ReadyTask } from '../../src/caring/readiness.ts';
import { watchRepair } from '../../src/caring/repair-watch.ts';
import { chargeAfter } from '../../src/caring/self-discharge.ts';

const LITHIUM = { perMonth: [0.03, 0.05], doublesEveryC: 10 } as const;

const TIME: CareTime = {
  today: '2026-03-01',
  leaveOn: '2026-03-10',
  homeOn: '2026-03-20',
  keptAtC: 25,
  freshDays: 14,
  restockDays: 7,
  selfDischarge: new Map([['pack', LITHIUM]]),
};

const rule = (facts: Partial<CareRuleFacts>): CareRuleFacts => ({
  id: 'r',
  title: 'Rule',
  text: 'Look.',
  minutes: 1,
  ...facts,
});

function dues(
  facts: Partial<CareRuleFacts>,
  thing: Partial<CareThing> = {},
  time: Partial<CareTime> = {},
): readonly CareDue[] {
  return duesOf({ id: 't', name: 'thing', rules: [rule(facts)], seen: [], ...thing }, { ...TIME, ...time });
}

const short = (list: readonly CareDue[]) => list.map(({ kind, on, when }) => [kind, on, when]);

describe('days', () => {
  it('count over months, years and leap days', () => {
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(addDays('2026-01-01', -1)).toBe('2025-12-31');
    expect(addMonths('2026-01-31', 1)).toBe('2026-02-28');
    expect(addMonths('2026-11-30', 3)).toBe('2027-02-28');
    expect(addYears('2028-02-29', 1)).toBe('2029-02-28');
    expect(daysBetween('2026-03-01', '2027-03-01')).toBe(365);
    expect(dayNumber('1970-01-02')).toBe(1);
    expect(() => dayNumber('2026-3-1')).toThrow('not a day');
  });
});

describe('days beside the calendar of the language', () => {
  it('agree with it on every day of 1890 to 2110, and refuse days that are none', () => {
    const first = Date.UTC(1890, 0, 1) / 86_400_000;
    const last = Date.UTC(2110, 11, 31) / 86_400_000;
    const wrong: number[] = [];
    for (let n = first; n <= last; n++) {
      const day = new Date(n * 86_400_000).toISOString().slice(0, 10);
      if (dayOf(n) !== day || dayNumber(day) !== n) wrong.push(n);
    }
    expect(wrong).toEqual([]);
    for (const none of ['2026-02-29', '2100-02-29', '2026-13-01', '2026-00-10', '2026-04-31'])
      expect(() => dayNumber(none), none).toThrow('not a day');
    expect(addMonths('2026-01-31', -2)).toBe('2025-11-30');
  });
});

describe('self-discharge', () => {
  it('loses the printed share in a month at 20 C, and as much in half a month 10 C warmer', () => {
    const month = 365.25 / 12;
    expect(chargeAfter(100, month, 20, LITHIUM).low).toBeCloseTo(95, 9);
    expect(chargeAfter(100, month, 20, LITHIUM).high).toBeCloseTo(97, 9);
    expect(chargeAfter(100, month / 2, 30, LITHIUM).low).toBeCloseTo(95, 9);
    expect(chargeAfter(80, 2 * month, 20, LITHIUM).pct).toBeCloseTo(80 * 0.96 ** 2, 9);
  });

  it('never gains charge, however cold, and loses none in no time', () => {
    expect(chargeAfter(90, 0, 40, LITHIUM).pct).toBe(90);
    expect(chargeAfter(90, -5, 40, LITHIUM).pct).toBe(90);
    expect(chargeAfter(90, 400, -20, LITHIUM).pct).toBeLessThan(90);
  });
});

describe('what is due', () => {
  it('a printed date counts, and speaks for a sealed thing better than years on the shelf', () => {
    const facts = { shelfYears: { sealed: [2, 3], openedYears: 1 } } as const;
    expect(short(dues(facts, { expiresOn: '2026-02-01', madeOn: '2020-01-01' }))).toEqual([
      ['expiry', '2026-02-01', 'overdue'],
    ]);
    expect(short(dues(facts, { madeOn: '2024-03-05' }))).toEqual([
      ['expiry', '2026-03-05', 'before-leaving'],
    ]);
    expect(short(dues(facts, { madeOn: '2024-03-15' }))).toEqual([['expiry', '2026-03-15', 'on-trip']]);
    expect(short(dues(facts))).toEqual([['expiry', null, 'unknown']]);
  });

  it('what is opened keeps as long as opened things do, whatever is printed', () => {
    const facts = { shelfYears: { sealed: [2, 3], openedYears: 1 } } as const;
    expect(short(dues(facts, { madeOn: '2025-12-01', openedOn: '2025-03-05' }))).toEqual([
      ['expiry', '2026-03-05', 'before-leaving'],
    ]);
    expect(short(dues(facts, { expiresOn: '2029-01-01', openedOn: '2025-02-01' }))).toEqual([
      ['expiry', '2029-01-01', 'later'],
      ['expiry', '2026-02-01', 'overdue'],
    ]);
  });

  it('age counts from making; where seeing to it renews it, from then', () => {
    const facts = { replaceYears: [3, 5] } as const;
    const seen = [{ rule: 'r', on: '2025-06-01' }];
    expect(short(dues(facts, { madeOn: '2023-03-01', seen }))).toEqual([
      ['replace', '2026-03-01', 'before-leaving'],
    ]);
    expect(short(dues({ ...facts, renews: true }, { madeOn: '2023-03-01', seen }))).toEqual([
      ['replace', '2028-06-01', 'later'],
    ]);
    expect(short(dues(facts))).toEqual([['replace', null, 'unknown']]);
  });

  it('a look is due by months or before a trip, whichever comes first; a fresh look serves the trip', () => {
    const facts = { everyMonths: 1, everyTrip: 'before', look: 'pressure' } as const;
    const at = (on: string) => short(dues(facts, { seen: [{ rule: 'r', on }] }));
    expect(at('2026-01-15')).toEqual([['pressure', '2026-02-15', 'overdue']]);
    expect(at('2026-02-15')).toEqual([['pressure', '2026-03-10', 'before-leaving']]);
    expect(at('2026-02-26')).toEqual([['pressure', '2026-03-26', 'later']]);
    expect(at('2026-03-05')).toEqual([['pressure', '2026-03-10', 'before-leaving']]);
    expect(short(dues(facts, { seen: [{ rule: 'other', on: '2026-02-26' }] }))).toEqual([
      ['pressure', '2026-03-10', 'before-leaving'],
    ]);
    expect(short(dues({ everyTrip: 'before' }, { seen: [{ rule: 'r', on: '2026-02-26' }] }))).toEqual([]);
  });

  it('after a trip things are put right within a week of coming home', () => {
    expect(short(dues({ everyTrip: 'after' }))).toEqual([['check', '2026-03-27', 'after-trip']]);
  });

  it('says what a pack holds on the day of leaving, and asks to top it up when that is too little', () => {
    const facts = { id: 'pack', look: 'charge', everyMonths: 3, storage: { leaveAtPct: 90 } } as const;
    const left = (on: string, chargePct: number) => dues(facts, { seen: [{ rule: 'pack', on, chargePct }] });
    const [old] = left('2025-09-10', 100);
    // Half a year at 25 C, 4 % a month, 2^0.5 faster: 100 x 0.96^(181 / 30.4375 x 1.41421) = 70.9 by hand.
    expect(old?.charge?.pct).toBeCloseTo(70.94, 1);
    expect(old).toMatchObject({
      kind: 'charge',
      when: 'before-leaving',
      words: 'at 25 C about 71 % by the day you leave; top it up to 90 %',
    });
    expect(short(left('2026-02-28', 95))).toEqual([['charge', '2026-05-28', 'later']]);
    const [unknown] = dues(facts);
    expect(unknown?.words).toContain('nobody has noted its charge');
  });

  it('warns of a trip hotter than what a thing bears', () => {
    const facts = { storage: { maxC: 27 } };
    expect(short(dues(facts, {}, { hottestC: 42 }))).toEqual([['storage', '2026-03-10', 'before-leaving']]);
    expect(dues(facts, {}, { hottestC: 26 })).toEqual([]);
    expect(dues(facts)).toEqual([]);
  });
});

describe('a repair under watch', () => {
  const hose = {
    lasts: 'temporary' as const,
    atKm: 1000,
    trustKm: 50,
    lookAgainKm: [5, 20],
    mended: false,
    looks: [],
  };

  it('is looked at where it says, then on and on until it is mended', () => {
    expect(watchRepair(hose, 1002)).toEqual({ nextLookKm: 1005, lookInKm: 3, trustLeftKm: 48, worse: false });
    expect(watchRepair({ ...hose, looks: [{ atKm: 1006, found: 'good' }] }, 1006).nextLookKm).toBe(1020);
    const seen = {
      ...hose,
      looks: [
        { atKm: 1021, found: 'good' as const },
        { atKm: 1006, found: 'worse' as const },
      ],
    };
    expect(watchRepair(seen, 1040)).toEqual({
      nextLookKm: 1036,
      lookInKm: -4,
      trustLeftKm: 10,
      worse: false,
    });
    expect(watchRepair({ ...hose, looks: [{ atKm: 1006, found: 'worse' }] }, 1010).worse).toBe(true);
    expect(watchRepair({ ...hose, mended: true }, 1040).nextLookKm).toBeNull();
  });

  it('that is permanent is done with after its last look', () => {
    const nuts = { ...hose, lasts: 'permanent' as const, lookAgainKm: [50] };
    expect(watchRepair(nuts, 1000)).toMatchObject({ nextLookKm: 1050, trustLeftKm: null });
    expect(watchRepair({ ...nuts, looks: [{ atKm: 1060, found: 'good' }] }, 1100).nextLookKm).toBeNull();
  });
});

describe('readiness', () => {
  const task = (id: string, more: Partial<ReadyTask>): ReadyTask => ({
    id,
    kind: 'care',
    about: null,
    title: id,
    words: '',
    chanceLost: 0,
    blocks: false,
    minutes: 1,
    takes: [],
    ...more,
  });

  it('[M10] puts what blocks first, then what risks most, then what is quickest', () => {
    const { tasks, minutes, takes } = readinessOf([
      task('slow', { chanceLost: 0.01, minutes: 9, takes: ['oil'] }),
      task('quick', { chanceLost: 0.01, minutes: 2, takes: ['oil', 'rag'] }),
      task('big', { chanceLost: 0.2, minutes: null }),
      task('stop', { blocks: true }),
    ]);
    expect(tasks.map((t) => t.id)).toEqual(['stop', 'big', 'quick', 'slow']);
    expect(minutes).toBe(12);
    expect(takes).toEqual(['oil', 'rag']);
  });

  it('is not ready while something blocks, and ready when only looks of no risk are left', () => {
    expect(readinessOf([]).status).toBe('ready');
    expect(readinessOf([task('a', { chanceLost: 9e-5 })]).status).toBe('ready');
    expect(readinessOf([task('a', { chanceLost: 2e-4 })]).status).toBe('ready-with-gaps');
    expect(readinessOf([task('a', { kind: 'loan' })]).status).toBe('ready-with-gaps');
    expect(readinessOf([task('a', { chanceLost: 0.5 }), task('b', { blocks: true })]).status).toBe(
      'not-ready',
    );
  });
});
