import type { CareDue } from '@waymend/core/caring/due';
import { describe, expect, it } from 'vitest';
import type { KitItem, PlanAnswer } from '../../src/answer/plan-answer.ts';
import type { RepairAnswer } from '../../src/answer/ready-answer.ts';
import { prepare } from '../../src/plan/plan-trip.ts';
import { careTasks, musterTasks, repairTasks } from '../../src/ready/tasks.ts';
import { SHIPPED_TRADE } from '../../src/shipped-trade.ts';
import { unused } from './demo.ts';

const repair: RepairAnswer = {
  id: 'h',
  title: 'Wrap the hose',
  lasts: 'temporary',
  on: '2026-11-01',
  speedKmh: 60,
  limits: null,
  nextLookKm: null,
  lookInKm: null,
  trustLeftKm: 400,
  worse: false,
};

describe('repairs before a trip', () => {
  const blocks = (more: Partial<RepairAnswer>) =>
    repairTasks([{ ...repair, ...more }], 300).map((t) => t.blocks);

  it('[M10] block it when they are not trusted for its length, were found worse, or were only made safe', () => {
    expect(blocks({})).toEqual([false]);
    expect(blocks({ trustLeftKm: null })).toEqual([false]);
    expect(blocks({ trustLeftKm: 299 })).toEqual([true]);
    expect(blocks({ worse: true })).toEqual([true]);
    expect(blocks({ lasts: 'made-safe', trustLeftKm: null })).toEqual([true]);
    expect(repairTasks([{ ...repair, trustLeftKm: -20 }], 300)[0]?.words).toContain(
      'trusted for 0 km more, at 60 km/h at most',
    );
  });

  it('[M10] that are permanent only ask for a look, where it falls on the trip', () => {
    const look = (lookInKm: number) => repairTasks([{ ...repair, lasts: 'permanent', lookInKm }], 300);
    expect(look(-5)[0]?.words).toContain('overdue');
    expect(look(100)[0]).toMatchObject({ kind: 'look', blocks: false });
    expect(look(301)).toEqual([]);
  });
});

describe('care before a trip', () => {
  const item: KitItem = {
    id: 'pack',
    name: 'pack',
    grams: 500,
    copies: 1,
    weighed: false,
    worth: 0.04,
    jobs: [],
    reason: 'worth',
    berth: null,
    bought: false,
  };
  const plan = (items: readonly KitItem[]): Pick<PlanAnswer, 'kit'> => ({
    kit: { massGrams: 0, volumeMl: 0, estimatedGrams: 0, items },
  });
  const due: CareDue = {
    thing: 'pack',
    name: 'pack',
    rule: 'r',
    kind: 'check',
    on: '2026-11-25',
    when: 'before-leaving',
    words: 'look',
    advice: 'Look.',
    minutes: 3,
    takes: [],
  };
  const lostOf = (...dues: readonly CareDue[]) => careTasks(dues, plan([item])).map((t) => t.chanceLost);

  it('[M10] risks the worth of the thing times what its neglect puts at stake: 0.04 x 0.6 for a passed date', () => {
    expect(lostOf({ ...due, kind: 'expiry' })[0]).toBeCloseTo(0.024, 12);
    expect(lostOf({ ...due, kind: 'charge', charge: { pct: 50, low: 40, high: 60 } })[0]).toBeCloseTo(
      0.04 * 0.6,
      12,
    );
    expect(lostOf({ ...due, thing: 'other' })).toEqual([0]);
  });

  it('[M10] is one task a thing, with the worst first and the minutes of a rule once', () => {
    const [task, ...more] = careTasks(
      [due, { ...due, kind: 'expiry', words: 'old' }, { ...due, rule: 's', minutes: 4 }],
      plan([item]),
    );
    expect(more).toEqual([]);
    expect(task).toMatchObject({ words: 'old; look', minutes: 7 });
  });

  it('[M10] leaves out what is due later, after the trip, or at an unknown day', () => {
    for (const when of ['later', 'after-trip', 'unknown'] as const)
      expect(lostOf({ ...due, when })).toEqual([]);
    for (const when of ['overdue', 'on-trip'] as const) expect(lostOf({ ...due, when })).toHaveLength(1);
  });
});

describe('an open muster', () => {
  it('blocks the trip of its vehicle, and a closed one or another vehicle does not', () => {
    const garage = unused();
    const tasks = (muster: { vehicle: string; closedOn?: string }) => {
      const made = prepare(
        { ...garage, musters: { m: { ...muster, openedOn: '2026-11-20' } } },
        'loop',
        SHIPPED_TRADE,
      );
      if (!made.ok) throw new Error(made.error.message);
      return musterTasks(made.value).map((t) => t.blocks);
    };
    expect(tasks({ vehicle: 'packer' })).toEqual([true]);
    expect(tasks({ vehicle: 'packer', closedOn: '2026-11-20' })).toEqual([]);
    expect(tasks({ vehicle: 'cart' })).toEqual([]);
  });
});
