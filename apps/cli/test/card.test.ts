import { describe, expect, it } from 'vitest';
import { cardAnswer } from '../src/schemas/card-schema.ts';
import { WIDTH } from '../src/text/layout.ts';
import { runOn } from './support/memory-io.ts';
import { WAGON, WAGON_FILE } from './support/wagon.ts';

const files = { [WAGON_FILE]: WAGON };
const card = (...argv: readonly string[]) => runOn({ files }, 'card', WAGON_FILE, ...argv);

async function json(...argv: readonly string[]) {
  const ran = await card(...argv, '--json');
  expect(ran.err).toBe('');
  expect(ran.code).toBe(0);
  const read = cardAnswer.safeParse(JSON.parse(ran.out));
  expect(read.error?.issues ?? []).toEqual([]);
  return read.data;
}

describe('waymend card', () => {
  it('prints what its schema describes: the symptoms, one symptom, a job', async () => {
    expect(await json('--symptom')).toMatchObject({ kind: 'symptoms' });
    const symptom = await json(
      '--symptom',
      'tyre-flat',
      '--answer',
      'which=vehicle',
      '--answer',
      'where=tread',
      '--with',
      'everything',
    );
    expect(symptom).toMatchObject({ kind: 'symptom', next: { id: 'size' } });
    const job = await json(
      'WT-01',
      '--with',
      'everything',
      '--at',
      '80',
      '--water',
      '3',
      '--people',
      'tomas',
    );
    expect(job).toMatchObject({
      kind: 'job',
      with: 'everything',
      help: { km: 80, from: 'said' },
      people: { here: 1, names: ['Tomas'] },
    });
  });

  it('with the planned kit only what comes along is here', async () => {
    const kit = await json('WT-01');
    const all = await json('WT-01', '--with', 'everything');
    if (kit?.kind !== 'job' || all?.kind !== 'job') throw new Error('not the card of a job');
    expect(kit.with).toBe('kit');
    const ways = (made: typeof kit) => made.needs.reduce((sum, n) => sum + n.others.length, 0);
    expect(ways(kit)).toBeLessThanOrEqual(ways(all));
    const plan = await runOn({ files }, 'plan', WAGON_FILE, '--json');
    const comes = plan.out;
    for (const need of kit.needs)
      for (const piece of need.best?.pieces ?? []) expect(comes).toContain(`"id": "${piece.id}"`);
  });

  it('says first what to do, and how hard to pull, within 100 columns', async () => {
    const ran = await card('WT-01', '--with', 'everything', '--water', '3');
    const lines = ran.out.split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(WIDTH);
    expect(lines.findIndex((l) => l.startsWith('What now'))).toBeLessThan(
      lines.findIndex((l) => l === 'You need'),
    );
    expect(ran.out).toMatch(/> Fix it: Everything it needs is here/);
    // 120 N m on a brace of 530 mm: by hand 120 / 0.53 = 226 N, 23 kg.
    expect(ran.out).toMatch(/needs 226 N\s+with the hand[\s\S]{0,60}about\s+23\s+kg/);
    expect(ran.out).toMatch(/maker's manual, local law and a licensed mechanic come first/);
    expect(ran.out).not.toMatch(/\bsafe\b/i);
  });

  it('somebody hurt comes before every tool', async () => {
    const ran = await card('WT-01', '--with', 'everything', '--hurt');
    expect(ran.out).toMatch(/> Call for help/);
    expect(ran.out).toMatch(/x Fix it: People come first/);
  });

  it.each([
    [[], 1, /Name a job, or start from what you notice with --symptom/],
    [['WT-99'], 1, /There is no job "WT-99"/],
    [['WT-01', '--symptom', 'leak'], 1, /either a job or a --symptom/],
    [['WT-01', '--answer', 'a=b'], 1, /belongs to a --symptom/],
    [['--symptom', '--answer', 'a=b'], 1, /belongs to one symptom/],
    [['--symptom', 'leak', '--answer', 'what'], 1, /written question=answer/],
    [
      ['--symptom', 'leak', '--answer', 'what=wine', '--with', 'everything'],
      1,
      /"wine" is no answer to "what"; it may be coolant/,
    ],
    [['WT-01', '--at', 'far'], 1, /--at wants a number/],
    [['WT-01', '--people', 'ann'], 1, /nobody called "ann"/],
    [['WT-01', '--trip', 'moon'], 1, /no trip "moon"/],
    [['WT-01', '--with', 'hope'], 2, /kit, everything/],
  ] as const)('refuses %j in a sentence', async (argv, code, says) => {
    const ran = await card(...argv);
    expect(ran.code).toBe(code);
    expect(ran.out).toBe('');
    expect(ran.err.replace(/\s+/g, ' ')).toMatch(says);
  });
});
