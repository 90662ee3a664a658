import { describe, expect, it } from 'vitest';
import type { Course, Decision, Situation } from '../../src/deciding/decide.ts';
import { decide } from '../../src/deciding/decide.ts';
import { metres } from '../../src/quantity/units.ts';

const PLAIN: Situation = {
  hurt: false,
  danger: false,
  help: metres(200_000),
  dark: false,
  daylightHours: 6,
  people: 2,
  convoy: false,
  waterDays: 5,
  foodDays: 5,
  fix: {
    possible: true,
    why: '',
    drives: true,
    trusted: metres(Number.MAX_SAFE_INTEGER),
    minutes: [20, 60],
    beneath: false,
    grade: 'proper',
  },
  limp: { title: 'Twist and tape', trusted: metres(50_000), speedKmh: 40 },
};
const NO_FIX = { ...PLAIN.fix, possible: false, why: 'A 35 mm socket is missing.' };

/** All courses with a verdict, the reasons in one text. */
function said(decision: Decision, course: Course): { verdict: string; text: string } {
  const found = decision.courses.find((c) => c.course === course);
  return { verdict: found?.verdict ?? '', text: found?.reasons.join(' ') ?? '' };
}
const first = (now: Partial<Situation>) => decide({ ...PLAIN, ...now }).courses[0]?.course;

describe('fix, limp, wait or call', () => {
  it('[M4] a limp counts only if the distance it is trusted for reaches help', () => {
    expect(first({ fix: NO_FIX })).toBe('call');
    expect(said(decide({ ...PLAIN, fix: NO_FIX }), 'limp').text).toMatch(
      /trusted for 50 km.*help is 200 km away.*does not get there/,
    );
    expect(first({ fix: NO_FIX, help: metres(50_000) })).toBe('limp');
    expect(first({ fix: NO_FIX, help: metres(50_001) })).toBe('call');
  });

  it('a repair that can be done is done, and its time said', () => {
    expect(first({})).toBe('fix');
    expect(said(decide(PLAIN), 'fix').text).toMatch(/20 to 60 minutes/);
  });

  it('[M4] a repair that only makes it less dangerous does not drive on', () => {
    expect(first({ fix: { ...PLAIN.fix, drives: false }, limp: null })).toBe('call');
  });

  it('what is missing is said where the repair cannot be done', () => {
    expect(said(decide({ ...PLAIN, fix: NO_FIX }), 'fix')).toEqual({
      verdict: 'not',
      text: 'A 35 mm socket is missing.',
    });
  });

  it('people come before vehicles: hurt or in danger, help is called first', () => {
    for (const more of [{ hurt: true }, { danger: true }]) {
      const decision = decide({ ...PLAIN, ...more });
      expect(decision.courses[0]?.course).toBe('call');
      expect(decision.before.join(' ')).toMatch(/hurt|dangerous place/);
      for (const course of ['fix', 'limp', 'wait'] as const)
        expect(said(decision, course).verdict).toBe('not');
    }
  });

  it('water for less than two days: call first, and repair meanwhile', () => {
    const decision = decide({ ...PLAIN, waterDays: 1 });
    expect(decision.courses[0]?.course).toBe('call');
    expect(said(decision, 'fix').verdict).toBe('may');
    expect(said(decision, 'wait').text).toMatch(/Water for 1 day is too little/);
  });

  it('[M2] what is done only as a last resort says so', () => {
    const rough = decide({ ...PLAIN, fix: { ...PLAIN.fix, grade: 'last-resort' } });
    expect(said(rough, 'fix').text).toMatch(/last resort: a piece may be spoiled/);
    expect(said(decide(PLAIN), 'fix').text).not.toMatch(/last resort/);
  });

  it('water that nobody counted is asked for', () => {
    expect(decide({ ...PLAIN, waterDays: null }).before.join(' ')).toMatch(/count it now/);
    expect(decide(PLAIN).before).toEqual([]);
  });

  it('work at a raised vehicle waits for daylight; other work goes on by torchlight', () => {
    const beneath = { ...PLAIN.fix, beneath: true };
    expect(first({ dark: true, fix: beneath })).toBe('wait');
    expect(first({ dark: true })).toBe('fix');
    // Half as long again by torchlight: 30 to 90 minutes.
    expect(said(decide({ ...PLAIN, dark: true }), 'fix').text).toMatch(/30 to 90 minutes by torchlight/);
    expect(first({ fix: beneath, daylightHours: 0.9 })).toBe('wait');
    expect(first({ fix: beneath, daylightHours: 1 })).toBe('fix');
    // Short of water nobody waits for the sun.
    const dry = decide({ ...PLAIN, dark: true, fix: beneath, waterDays: 1 });
    expect(dry.courses[0]?.course).toBe('call');
    expect(said(dry, 'fix').text).toMatch(/raised vehicle in the dark: two lights/);
  });

  it('alone beneath a vehicle, somebody is told first', () => {
    const decision = decide({ ...PLAIN, people: 1, fix: { ...PLAIN.fix, beneath: true } });
    expect(said(decision, 'fix').text).toMatch(/You are alone/);
  });

  it('another vehicle makes waiting worth something', () => {
    expect(said(decide({ ...PLAIN, convoy: true }), 'wait').verdict).toBe('may');
    expect(said(decide(PLAIN), 'wait').verdict).toBe('not');
  });

  it('always weighs all four, names one first, gives each a reason, and never calls anything safe', () => {
    const flags = [true, false];
    let looked = 0;
    for (const hurt of flags)
      for (const danger of flags)
        for (const dark of flags)
          for (const convoy of flags)
            for (const waterDays of [null, 1, 6])
              for (const fix of [
                PLAIN.fix,
                NO_FIX,
                { ...PLAIN.fix, beneath: true },
                { ...PLAIN.fix, drives: false },
              ])
                for (const limp of [null, PLAIN.limp])
                  for (const help of [metres(500), metres(250_000)]) {
                    const { before, courses } = decide({
                      ...PLAIN,
                      hurt,
                      danger,
                      dark,
                      convoy,
                      waterDays,
                      fix,
                      limp,
                      help,
                    });
                    looked += 1;
                    expect(courses.map((c) => c.course).sort()).toEqual(['call', 'fix', 'limp', 'wait']);
                    expect(courses.filter((c) => c.verdict === 'first')).toEqual([courses[0]]);
                    for (const c of courses) expect(c.reasons.join('')).not.toBe('');
                    const all = [...before, ...courses.flatMap((c) => c.reasons)].join(' ');
                    expect(all).not.toMatch(/\bsafe(ly|st)?\b/i);
                  }
    expect(looked).toBe(768);
  });
});
