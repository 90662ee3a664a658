import type { Garage } from '@waymend/garage/record/schema';
import { garageFile } from '@waymend/garage/record/schema';
import type { DueAnswer } from '@waymend/planner/answer/ready-answer';
import { describe, expect, it } from 'vitest';
import type { ReadyTask } from '../../src/places/bags/care/care-acts.ts';
import { actOf, careToday, putRight } from '../../src/places/bags/care/care-acts.ts';

const ON = '2026-03-04';
const GARAGE: Garage = garageFile.parse({
  waymend: 1,
  name: 'test',
  belongings: {
    pack: { name: 'jump pack', state: 'flat' },
    glue: { name: 'glue', state: 'expired' },
    jack: { name: 'jack', state: 'lent' },
    rack: { name: 'ratchet', state: 'unproven' },
  },
  loans: { l1: { belonging: 'jack', to: 'Ben', on: '2026-01-01' } },
});

const task = (kind: ReadyTask['kind'], about: string | null): ReadyTask => ({
  id: `${kind}-${about ?? ''}`,
  kind,
  about,
  title: 'it',
  words: 'it',
  chanceLost: 0,
  blocks: false,
  minutes: null,
  takes: [],
});
const due = (thing: string, rule: string, kind: DueAnswer['kind'], when: DueAnswer['when']): DueAnswer => ({
  thing,
  name: thing,
  rule,
  kind,
  on: ON,
  when,
  words: 'due',
  advice: 'do it',
  minutes: 1,
  takes: [],
  charge: null,
  basis: 'estimate',
});

describe('what can be pressed for a task', () => {
  const dues = [
    due('pack', 'lithium', 'charge', 'overdue'),
    due('pack', 'look', 'check', 'before-leaving'),
    due('pack', 'age', 'replace', 'later'),
    due('glue', 'epoxy', 'expiry', 'overdue'),
  ];

  it('records every rule that is due now, and asks for the charge where one of them is a charge', () => {
    expect(actOf(task('care', 'pack'), { dues }, GARAGE)).toEqual({
      kind: 'charge',
      rules: ['lithium', 'look'],
    });
  });

  it('offers no press for a date that is past: only a new thing cures it', () => {
    expect(actOf(task('care', 'glue'), { dues }, GARAGE).kind).toBe('go');
    expect(actOf(task('unready', 'glue'), { dues }, GARAGE).kind).toBe('go');
  });

  it('leads an open muster to its count', () => {
    expect(actOf(task('muster', 'm-1'), { dues }, GARAGE)).toEqual({
      kind: 'go',
      to: '/bags/muster/m-1',
      act: 'count',
    });
  });
});

describe('a press', () => {
  it('records the marks with the charge, and what was flat is ready', () => {
    const done = careToday(GARAGE, task('care', 'pack'), ['lithium', 'look'], { on: ON, chargePct: 90 }, [
      'a',
      'b',
    ]);
    if (!done.ok) throw new Error(done.error.message);
    expect(done.value.careMarks).toEqual({
      a: { rule: 'lithium', on: ON, chargePct: 90, belonging: 'pack' },
      b: { rule: 'look', on: ON, chargePct: 90, belonging: 'pack' },
    });
    expect(done.value.belongings['pack']?.state).toBe('ready');
  });

  it('takes a loan back on that day', () => {
    const done = putRight(GARAGE, task('loan', 'jack'), 'loan-back', ON);
    if (!done.ok) throw new Error(done.error.message);
    expect(done.value.loans['l1']?.backOn).toBe(ON);
    expect(done.value.belongings['jack']?.state).toBe('ready');
  });

  it('makes a tried thing ready and leaves every other as it was', () => {
    const done = putRight(GARAGE, task('incomplete', 'rack'), 'tried', ON);
    if (!done.ok) throw new Error(done.error.message);
    expect(done.value.belongings).toEqual({
      ...GARAGE.belongings,
      rack: { ...GARAGE.belongings['rack'], state: 'ready' },
    });
  });

  it('refuses to mend a repair that is not there', () => {
    expect(putRight(GARAGE, task('repair', 'nothing'), 'mended', ON).ok).toBe(false);
  });
});
