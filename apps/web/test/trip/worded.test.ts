import { garageFile } from '@waymend/garage/record/schema';
import { describe, expect, it } from 'vitest';
import type { Reply } from '../../src/worker/protocol.ts';
import { NO_NAMES, ownNames, worded } from '../../src/worker/trip/worded.ts';

const GARAGE = garageFile.parse({
  waymend: 1,
  name: 'test',
  belongings: { 'wrench-13': { name: "grandfather's wrench" }, 'tyre-lever': { is: 'TL-1' } },
});

describe('replies in the owner’s words', () => {
  const jobs: Reply = {
    kind: 'trip/jobs',
    jobs: [
      {
        id: 'tyre-wrench',
        title: 'Tighten the wheel nuts with a wrench',
        system: 'wheels-tyres',
        skill: 1,
        people: 1,
      },
    ],
  };

  it('changes titles and leaves ids', () => {
    expect(worded(jobs, 'american', NO_NAMES)).toEqual({
      kind: 'trip/jobs',
      jobs: [{ ...jobs.jobs[0], title: 'Tighten the lug nuts with a wrench' }],
    });
    expect(worded(jobs, 'british', NO_NAMES)).toMatchObject({
      jobs: [{ id: 'tyre-wrench', title: 'Tighten the wheel nuts with a spanner' }],
    });
  });

  it('leaves a name as its owner typed it', () => {
    const own = ownNames({
      kind: 'plan',
      garage: GARAGE,
      trip: 't',
      question: { aim: { kind: 'best-chance' } },
    });
    const why: Reply = {
      kind: 'why',
      why: {
        schema: 'waymend.why/1',
        kind: 'belonging',
        id: 'wrench-13',
        name: "grandfather's wrench",
        grams: 100,
        comes: true,
        worth: 0,
        jobs: [],
        substitutes: [{ id: 'x', name: 'adjustable wrench', grams: 1, owned: true, cents: 0, chanceLost: 0 }],
        words: 'It stays: a wrench does the same.',
      },
    };
    const said = worded(why, 'british', own);
    expect(said.why).toMatchObject({
      id: 'wrench-13',
      name: "grandfather's wrench",
      substitutes: [{ name: 'adjustable spanner' }],
      words: 'It stays: a spanner does the same.',
    });
  });

  it('leaves the name of a bag as it is inside a sentence', () => {
    const garage = garageFile.parse({
      waymend: 1,
      name: 'test',
      bags: { roll: { name: 'wrenches to 15' }, more: { name: 'wrenches' } },
    });
    const own = ownNames({ kind: 'plan', garage, trip: 't', question: { aim: { kind: 'best-chance' } } });
    const none: Reply = {
      kind: 'no-plan',
      sentences: ['Put the wrench into wrenches to 15.', 'Load wrenches first; a wrench is heavy.'],
      clashes: [],
    };
    expect(worded(none, 'british', own)).toMatchObject({
      sentences: ['Put the spanner into wrenches to 15.', 'Load wrenches first; a spanner is heavy.'],
    });
  });

  it('never rewords a garage, which would be saved so', () => {
    const garage: Reply = { kind: 'garage', garage: GARAGE };
    expect(worded(garage, 'british', NO_NAMES)).toBe(garage);
  });
});
