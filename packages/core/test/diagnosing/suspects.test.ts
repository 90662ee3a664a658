import { describe, expect, it } from 'vitest';
import type { Signs } from '../../src/diagnosing/suspects.ts';
import { CANNOT_TELL, MISFIT, nextQuestion, suspects } from '../../src/diagnosing/suspects.ts';

const SIGNS: Signs = {
  questions: [
    { id: 'lamps', answers: [{ id: 'bright' }, { id: 'dim' }] },
    { id: 'click', answers: [{ id: 'one' }, { id: 'many' }] },
  ],
  leads: [
    { failure: 'flat', fits: { lamps: ['dim'] } },
    { failure: 'contacts', fits: { lamps: ['bright'], click: ['one'] } },
    { failure: 'relay', fits: { lamps: ['bright'], click: ['many'] } },
    { failure: 'elsewhere', fits: {} },
  ],
};
const EXPECTED = new Map([
  ['flat', 0.03],
  ['contacts', 0.01],
  ['relay', 0.01],
]);

describe('suspects behind a symptom', () => {
  it('[M1] without answers are in the proportion of their expected events, and what the vehicle cannot have is left out', () => {
    const list = suspects(SIGNS, new Map(), EXPECTED);
    expect(list.map((s) => s.failure)).toEqual(['flat', 'contacts', 'relay']);
    for (const [n, share] of [0.6, 0.2, 0.2].entries()) expect(list[n]?.share).toBeCloseTo(share, 12);
  });

  it('an answer makes a suspect unlikely and never impossible', () => {
    const list = suspects(SIGNS, new Map([['lamps', 'bright']]), EXPECTED);
    expect(list.map((s) => s.failure)).toEqual(['contacts', 'relay', 'flat']);
    // By hand: 0.03 x 0.05 = 0.0015 beside 0.01 and 0.01.
    expect(list[2]?.share).toBeCloseTo(0.0015 / 0.0215, 9);
    expect(list[2]?.against).toEqual(['lamps']);
    expect(MISFIT).toBe(0.05);
  });

  it('a failure for which nothing is expected is still named, last', () => {
    const list = suspects(SIGNS, new Map(), new Map([...EXPECTED, ['elsewhere', 0]]));
    expect(list.at(-1)?.failure).toBe('elsewhere');
    expect(list.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1, 12);
  });

  it('asks what still parts those that are left, and nothing once one is left', () => {
    expect(nextQuestion(SIGNS, new Map(), EXPECTED)).toBe('lamps');
    expect(nextQuestion(SIGNS, new Map([['lamps', 'bright']]), EXPECTED)).toBe('click');
    expect(nextQuestion(SIGNS, new Map([['lamps', 'dim']]), EXPECTED)).toBeNull();
    const both = new Map([
      ['lamps', 'bright'],
      ['click', 'one'],
    ]);
    expect(nextQuestion(SIGNS, both, EXPECTED)).toBeNull();
  });

  it('a question that cannot be answered speaks against nothing and is not asked again', () => {
    const unsure = new Map([['lamps', CANNOT_TELL]]);
    expect(suspects(SIGNS, unsure, EXPECTED)).toEqual(suspects(SIGNS, new Map(), EXPECTED));
    expect(nextQuestion(SIGNS, unsure, EXPECTED)).toBe('click');
    expect(nextQuestion(SIGNS, new Map([...unsure, ['click', CANNOT_TELL]]), EXPECTED)).toBeNull();
  });
});
