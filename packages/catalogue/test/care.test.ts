import { describe, expect, it } from 'vitest';
import { BELONGINGS } from '../src/belongings/all.ts';
import { CARE_RULE_BY_ID, CARE_RULES } from '../src/care/all.ts';
import { AT_STAKE, AT_STAKE_BASIS } from '../src/care/at-stake.ts';
import { SELF_DISCHARGES } from '../src/care/self-discharge-of.ts';

describe('care rules', () => {
  it('use each id once, and say what to do', () => {
    expect(CARE_RULE_BY_ID.size).toBe(CARE_RULES.length);
    for (const { id, text } of CARE_RULES) expect(text, id).toMatch(/\.$/);
  });

  it('are named by belongings, and each belonging rule is named by one', () => {
    const named = new Set(BELONGINGS.flatMap((b) => b.care ?? []));
    for (const id of named) expect(CARE_RULE_BY_ID.get(id)?.applies, id).toBe('belonging');
    for (const { id, applies } of CARE_RULES) expect(named.has(id), id).toBe(applies === 'belonging');
  });

  it('say when: at an interval, around a trip, after a job, by date, or how to store', () => {
    for (const rule of CARE_RULES) {
      const when = [
        rule.everyMonths,
        rule.everyTrip,
        rule.afterEveryJob,
        rule.shelfYears,
        rule.replaceYears,
        rule.storage,
      ];
      expect(
        when.some((w) => w !== undefined),
        rule.id,
      ).toBe(true);
    }
  });

  it('keep ranges the right way round and what is opened no longer than what is sealed', () => {
    for (const { id, shelfYears, replaceYears, storage } of CARE_RULES) {
      for (const range of [shelfYears?.sealed, replaceYears, storage?.chargePct]) {
        if (range !== undefined) expect(range[0], id).toBeLessThanOrEqual(range[1]);
      }
      if (shelfYears?.openedYears !== undefined) {
        expect(shelfYears.openedYears, id).toBeLessThanOrEqual(shelfYears.sealed[0]);
      }
    }
  });

  it('say how long they take, and name what holds charge in the table of self-discharge', () => {
    for (const { id, minutes } of CARE_RULES) expect(minutes, id).toBeGreaterThan(0);
    const known = new Map(SELF_DISCHARGES.map((s) => [s.rule, s]));
    for (const { id, storage } of CARE_RULES)
      if (storage?.chargePct !== undefined) expect(known.has(id), id).toBe(true);
    for (const { rule, perMonth } of known.values()) {
      expect(CARE_RULE_BY_ID.has(rule), rule).toBe(true);
      expect(perMonth[0]).toBeGreaterThan(0);
      expect(perMonth[1]).toBeGreaterThanOrEqual(perMonth[0]);
      expect(perMonth[1]).toBeLessThan(0.1);
    }
    // The table of self-discharge: lead-acid 4 to 6 % a month.
    expect(known.get('jump-pack-lead')?.perMonth).toEqual([0.04, 0.06]);
  });

  it('rank what neglect puts at stake: useless before expired before unlooked at', () => {
    const { useless, expiry, service, check } = AT_STAKE;
    expect(useless).toBe(1);
    expect(useless).toBeGreaterThan(expiry);
    expect(expiry).toBeGreaterThan(service);
    expect(service).toBeGreaterThan(check);
    expect(AT_STAKE_BASIS.kind).toBe('estimate');
  });

  it('give lithium and aerosol belongings a rule of their own', () => {
    for (const { id, marks = [], care = [] } of BELONGINGS) {
      if (marks.includes('aerosol')) expect(care, id).toContain('aerosol');
      if (marks.includes('lithium')) expect(care.length, id).toBeGreaterThan(0);
    }
  });
});
