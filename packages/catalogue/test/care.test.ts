import { describe, expect, it } from 'vitest';
import { BELONGINGS } from '../src/belongings/all.ts';
import { CARE_RULE_BY_ID, CARE_RULES } from '../src/care/all.ts';

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

  it('give lithium and aerosol belongings a rule of their own', () => {
    for (const { id, marks = [], care = [] } of BELONGINGS) {
      if (marks.includes('aerosol')) expect(care, id).toContain('aerosol');
      if (marks.includes('lithium')) expect(care.length, id).toBeGreaterThan(0);
    }
  });
});
