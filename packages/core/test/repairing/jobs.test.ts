import { describe, expect, it } from 'vitest';
import { SCORE_UNIT } from '../../src/choosing/problem.ts';
import { assertWellFormed } from '../../src/choosing/well-formed.ts';
import { metres, newtonMetres } from '../../src/quantity/units.ts';
import { buildProblem } from '../../src/repairing/build-problem.ts';
import type { Grade, SceneJob } from '../../src/repairing/scene.ts';
import { sizeOf } from '../fastening/sizes.ts';
import {
  built,
  chanceWith,
  combination,
  does,
  FAR,
  job,
  joint,
  lossWith,
  piece,
  scene,
  trouble,
} from './hand-made.ts';

const three = ['grip', 'pry', 'file'].map((fn) => piece(fn, [does(fn)]));
const needs = ['grip', 'pry', 'file'].map((fn) => ({ kind: 'function' as const, fn }));

describe('[M4] jobs', () => {
  it('[M4] all or nothing: one need open and the job is not done', () => {
    const answer = built(
      scene({ jobs: [job('J', { needs })], trouble: [trouble('t', ['J'])], pieces: three }),
    );
    expect(chanceWith(answer, [])).toBe(0);
    expect(chanceWith(answer, ['grip', 'pry'])).toBe(0);
    expect(chanceWith(answer, ['grip', 'pry', 'file'])).toBeCloseTo(0.8, 6);
  });

  it('[M4] p is restored x grade x practice: 1, 0.9, 0.5', () => {
    const chance = (grade: Grade, chanceFactor: number) =>
      chanceWith(
        built(
          scene({
            jobs: [job('J', { needs: [{ kind: 'function', fn: 'grip' }], chanceFactor })],
            trouble: [trouble('t', ['J'])],
            pieces: [piece('g', [does('grip', { grade })])],
          }),
        ),
        ['g'],
      );
    expect(chance('proper', 1)).toBeCloseTo(0.8, 6);
    expect(chance('with-care', 1)).toBeCloseTo(0.8 * 0.9, 6);
    expect(chance('last-resort', 1)).toBeCloseTo(0.8 * 0.5, 6);
    expect(chance('with-care', 0.85)).toBeCloseTo(0.8 * 0.9 * 0.85, 6);
  });

  it('[M4] grades are cumulative: one poor tool pulls the whole job down, and no further', () => {
    const grip = (id: string, grade: Grade) => piece(id, [does('grip', { grade })]);
    const answer = built(
      scene({
        jobs: [job('J', { needs: needs.slice(0, 2) })],
        trouble: [trouble('t', ['J'])],
        pieces: [
          grip('good', 'proper'),
          grip('poor', 'last-resort'),
          piece('pry', [does('pry', { grade: 'with-care' })]),
        ],
      }),
    );
    expect(chanceWith(answer, ['good', 'pry'])).toBeCloseTo(0.8 * 0.9, 6);
    expect(chanceWith(answer, ['poor', 'pry'])).toBeCloseTo(0.8 * 0.5, 6);
    expect(chanceWith(answer, ['good', 'poor', 'pry'])).toBeCloseTo(0.8 * 0.9, 6);
  });

  it('[M4] the best possible job counts, not the sum', () => {
    const answer = built(
      scene({
        jobs: [
          job('A', { needs: needs.slice(0, 1) }),
          job('B', { needs: needs.slice(1, 2), chanceFactor: 0.5 }),
        ],
        trouble: [trouble('t', ['A', 'B'])],
        pieces: three,
      }),
    );
    expect(chanceWith(answer, ['grip'])).toBeCloseTo(0.8, 6);
    expect(chanceWith(answer, ['pry'])).toBeCloseTo(0.4, 6);
    expect(chanceWith(answer, ['grip', 'pry'])).toBeCloseTo(0.8, 6);
  });

  it('[M4] a limp counts in full only if it is trusted as far as help', () => {
    const limp = (trusted: number, help: number) => {
      const answer = built(
        scene({
          jobs: [job('L', { trusted: metres(trusted) })],
          trouble: [trouble('t', ['L'], { help: metres(help) })],
        }),
      );
      return [chanceWith(answer, []), answer.blocked.get('t')?.[0]?.why ?? null];
    };
    expect(limp(50_000, 50_000)).toEqual([expect.closeTo(0.8, 6), null]);
    expect(limp(50_000, 50_001)).toEqual([0, 'trust']);
    // Made safe restores nothing, even beside the workshop.
    expect(limp(0, 0)).toEqual([0, 'trust']);
  });

  it('[M4] too little skill, too few people: no option, and the reason is kept', () => {
    const answer = (change: Partial<SceneJob>) =>
      built(scene({ jobs: [job('J', change)], trouble: [trouble('t', ['J'])] }));
    const unskilled = answer({ skill: 4, bestSkill: 3 });
    expect(unskilled.blocked.get('t')).toEqual([{ job: 'J', why: 'skill' }]);
    expect(unskilled.problem.events).toEqual([]);
    expect(unskilled.hopeless.map((t) => t.id)).toEqual(['t']);
    expect(unskilled.problem.fixedLoss).toBe(Math.round(0.1 / SCORE_UNIT));
    expect(answer({ people: 3 }).blocked.get('t')).toEqual([{ job: 'J', why: 'people' }]);
    expect(answer({ people: 2, skill: 3 }).blocked.size).toBe(0);
  });

  it('[M5] gains never exceed losses, and the lost part is what no job restores', () => {
    const answer = built(
      scene({
        jobs: [job('J')],
        trouble: [trouble('sure', ['J'], { restored: 1 }), trouble('half', ['J'], { restored: 0.5 })],
      }),
    );
    for (const event of answer.problem.events)
      for (const option of event.options) expect(option.gain).toBeLessThanOrEqual(event.loss);
    expect(lossWith(answer, [])).toBe(Math.round(0.05 / SCORE_UNIT));
  });

  it('[M5] one failure near and far merges where the same jobs are trusted, and not where they are not', () => {
    const jobs = [job('fix'), job('limp', { trusted: metres(50_000), chanceFactor: 0.5 })];
    const of = (nearHelp: number) =>
      built(
        scene({
          jobs,
          trouble: [
            trouble('t~near', ['fix', 'limp'], { failure: 't', help: metres(nearHelp) }),
            trouble('t~far', ['fix', 'limp'], { failure: 't', help: FAR, expected: 0.2 }),
          ],
        }),
      );
    const merged = of(200_000);
    expect(merged.problem.events.map((e) => e.id)).toEqual(['t~near + t~far']);
    expect(merged.problem.events[0]?.loss).toBe(Math.round(0.1 / SCORE_UNIT) + Math.round(0.2 / SCORE_UNIT));
    expect(merged.troubles.map((ts) => ts.map((t) => t.id))).toEqual([['t~near', 't~far']]);
    expect(of(40_000).problem.events).toHaveLength(2);
  });

  it('[M5] two failures with the same cure stay two events, so that each can be explained', () => {
    const answer = built(scene({ jobs: [job('J')], trouble: [trouble('a', ['J']), trouble('b', ['J'])] }));
    expect(answer.problem.events.map((e) => e.id)).toEqual(['a', 'b']);
  });

  it('[M4] what a problem means can be read back from its numbers', () => {
    const answer = built(
      scene({
        joints: [joint({ id: 'sump', title: 'Sump plug', torque: newtonMetres(38) })],
        jobs: [
          job('J', {
            needs: [
              { kind: 'turn', joint: 'sump' },
              { kind: 'function', fn: 'catch' },
            ],
          }),
        ],
        trouble: [trouble('t', ['J'])],
        pieces: [piece('w17', [combination('17 mm')]), piece('tin', [does('catch')])],
      }),
    );
    assertWellFormed(answer.problem);
    const [event] = answer.problem.events;
    const [option] = event?.options ?? [];
    expect(option?.label).toBe('t | J | proper');
    expect(answer.byLabel.get(option?.label ?? '')).toMatchObject({ grade: 'proper', chance: 0.8 });
    expect(answer.options[0]?.job.id).toBe('J');
    expect(answer.indexOf.get('tin')).toBe(1);
    const turned = answer.joints.get('sump')?.proper;
    if (turned === undefined) throw new Error('the sump plug is not turned');
    expect(answer.needs[turned]?.turns).toContainEqual({ joint: 'sump', grade: 'proper' });
    expect(answer.needs[turned]?.words[0]).toBe('undo Sump plug, 17 mm (properly)');
    expect(answer.jobs.get('J')?.proper).toBe(option?.needs[0]);
  });

  it('[M4] a job that turns a joint nobody described is a bug, not a mistake of the owner', () => {
    const bad = scene({
      jobs: [job('J', { needs: [{ kind: 'turn', joint: 'x' }] })],
      trouble: [trouble('t', ['J'])],
    });
    expect(() => buildProblem(bad)).toThrow('joint x');
  });

  it('[M4] equal joints of two jobs share their needs', () => {
    const at = (id: string) => joint({ id, torque: newtonMetres(30), size: sizeOf('13 mm') });
    const answer = built(
      scene({
        joints: [at('a'), at('b')],
        jobs: ['a', 'b'].map((id) =>
          job(`J${id}`, {
            needs: [
              { kind: 'turn', joint: id },
              { kind: 'function', fn: id },
            ],
          }),
        ),
        trouble: [trouble('ta', ['Ja']), trouble('tb', ['Jb'])],
        pieces: [
          piece('w', [combination('13 mm')]),
          piece('v', [combination('13 mm')]),
          piece('fa', [does('a')]),
          piece('fb', [does('b')]),
        ],
      }),
    );
    expect(answer.joints.get('a')).toEqual(answer.joints.get('b'));
    expect(answer.joints.get('a')?.proper).toBeDefined();
  });
});
