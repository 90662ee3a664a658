import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { ANSWERS } from '../src/schemas/answers.ts';
import { careAnswer, musterAnswer, repairAnswer } from '../src/schemas/care-schema.ts';
import type { Ran } from './support/memory-io.ts';
import { runOn } from './support/memory-io.ts';
import { WAGON, WAGON_FILE } from './support/wagon.ts';

const DEMO = readFileSync(
  fileURLToPath(new URL('../../../examples/demo.garage.yaml', import.meta.url)),
  'utf8',
);

/** Runs on one garage file, and gives the file as it is afterwards. */
async function on(text: string, ...argv: readonly string[]): Promise<Ran & { readonly file: string }> {
  const [command = '', ...rest] = argv;
  const ran = await runOn({ files: { [WAGON_FILE]: text } }, command, WAGON_FILE, ...rest);
  return { ...ran, file: ran.written.find((w) => w.path === WAGON_FILE)?.data ?? text };
}

describe('care', () => {
  let ran: Ran;
  beforeAll(async () => {
    ran = await on(
      DEMO,
      'care',
      '--on',
      '2026-11-25',
      '--leave',
      '2026-12-05',
      '--json',
      '--calendar',
      'due.ics',
    );
  });

  it('[M10] says what to do, what blocks first, then by the chance lost', () => {
    expect(ran.code).toBe(0);
    const answer = careAnswer.parse(JSON.parse(ran.out));
    expect([answer.today, answer.leaveOn, answer.homeOn]).toEqual(['2026-11-25', '2026-12-05', '2026-12-20']);
    expect(answer.status).toBe('ready-with-gaps');
    const lost = answer.tasks.filter((t) => !t.blocks).map((t) => t.chanceLost);
    expect(lost).toEqual([...lost].sort((a, b) => b - a));
    expect(answer.tasks.find((t) => t.about === 'suspension')?.kind).toBe('recent-work');
    // Looked at on 21 November, so that only what is older than two weeks by the day of leaving is asked for again.
    expect(answer.dues.some((d) => d.thing === 'p-wheel' && d.kind === 'pressure')).toBe(false);
    expect(answer.repairs).toMatchObject([
      { id: 'flange', lasts: 'temporary', nextLookKm: 187_070, lookInKm: 70 },
    ]);
    expect(answer.loans).toMatchObject([{ belonging: 'tw-2', daysLate: 143 }]);
    expect(answer.ownLog.groups).toEqual([]);
  });

  it('writes the due days and looks as a calendar', () => {
    const calendar = ran.written.find((w) => w.path === 'due.ics')?.data ?? '';
    expect(calendar.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
    expect(calendar).toContain('UID:look-flange-187070@waymend');
    expect(ran.err).toContain('to due.ics');
  });

  it('prints it as text with the caution, and refuses days that are none', async () => {
    const text = await on(DEMO, 'care', '--on', '2026-11-25');
    expect(text.out).toContain('Repairs to watch');
    expect(text.out).toContain("the maker's manual");
    for (const line of text.out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
    expect(await on(DEMO, 'care')).toMatchObject({ code: 2 });
    const wrong = await on(DEMO, 'care', '--on', '2026-02-30');
    expect([wrong.code, wrong.err]).toEqual([1, '"2026-02-30" is not a day; write --on 2026-03-05.\n']);
    expect(await on(DEMO, 'care', '--on', '2026-02-20', '--leave', '2026-02-19')).toMatchObject({ code: 1 });
  });
});

describe('muster', () => {
  it('opens for a job with the pieces of its card, counts, refuses to close half done, and closes with what changed', async () => {
    const open = await on(
      DEMO,
      'muster',
      'open',
      '--on',
      '2026-12-08',
      '--job',
      'WT-01',
      '--trip',
      'loop',
      '--write',
      '--json',
    );
    expect(open.code).toBe(0);
    const opened = musterAnswer.parse(JSON.parse(open.out));
    expect(opened.written).toBe(true);
    expect(opened.musters[0]?.counts.map((c) => c.belonging)).toContain('p-wheel');

    const counted = await on(open.file, 'muster', 'count', '--used', 'p-wheel', '--write');
    const early = await on(counted.file, 'muster', 'close', '--on', '2026-12-08', '--write');
    expect(early.code).toBe(1);
    expect(early.err).toContain('Not yet accounted for');
    expect(early.written).toEqual([]);

    const rest = await on(counted.file, 'muster', 'count', '--all-but', '--write');
    const close = await on(rest.file, 'muster', 'close', '--on', '2026-12-08', '--write', '--json');
    const closed = musterAnswer.parse(JSON.parse(close.out));
    expect(closed.musters[0]?.closedOn).toBe('2026-12-08');
    expect(closed.restock).toMatchObject([{ why: 'used', belonging: 'p-wheel', amount: 1 }]);
    expect(closed.chance?.after ?? 1).toBeLessThan(closed.chance?.before ?? 0);
    expect((await on(close.file, 'check')).code).toBe(0);
  });

  it('writes nothing without --write, and says so', async () => {
    const shown = await on(WAGON, 'muster', 'open', '--on', '2026-12-08', '--out', 'wheel');
    expect(shown.code).toBe(0);
    expect(shown.written).toEqual([]);
    expect(shown.out).toContain('Nothing written yet: add --write');
    const refused = await on(WAGON, 'muster', 'open', '--on', '2026-12-08', '--out', 'wheel=7');
    expect([refused.code, refused.written]).toEqual([1, []]);
    expect(await on(WAGON, 'muster', 'juggle')).toMatchObject({ code: 2 });
    expect(await on(WAGON, 'muster', 'count', '--back', 'wheel')).toMatchObject({ code: 1 });
  });
});

describe('repair', () => {
  it('[M4] records a weaker way with its limits, looks at it and mends it', async () => {
    const done = await on(
      DEMO,
      'repair',
      'record',
      '--job',
      'EX-02B',
      '--way',
      'EX-02B/drive',
      '--on',
      '2026-12-08',
      '--at',
      '187900',
      '--write',
      '--json',
    );
    const recorded = repairAnswer.parse(JSON.parse(done.out));
    expect(recorded.repairs.find((r) => r.id === 'repair-1')).toMatchObject({
      lasts: 'temporary',
      trustLeftKm: 50,
    });
    const looked = await on(
      done.file,
      'repair',
      'look',
      '--repair',
      'repair-1',
      '--on',
      '2026-12-09',
      '--at',
      '187940',
      '--found',
      'worse',
      '--write',
      '--json',
    );
    expect(repairAnswer.parse(JSON.parse(looked.out)).repairs.find((r) => r.id === 'repair-1')).toMatchObject(
      { worse: true, trustLeftKm: 10 },
    );
    const mended = await on(
      looked.file,
      'repair',
      'mend',
      '--repair',
      'repair-1',
      '--on',
      '2026-12-12',
      '--write',
      '--json',
    );
    expect(repairAnswer.parse(JSON.parse(mended.out)).repairs.map((r) => r.id)).toEqual(['flange']);
  });

  it('refuses an odometer that goes back, and takes a replaced one', async () => {
    const back = await on(DEMO, 'repair', 'reading', '--on', '2026-12-01', '--at', '186000', '--write');
    expect([back.code, back.written]).toEqual([1, []]);
    expect(back.err).toContain('odometer');
    const replaced = await on(
      DEMO,
      'repair',
      'reading',
      '--on',
      '2026-12-01',
      '--at',
      '12',
      '--old',
      '187100',
      '--write',
      '--json',
    );
    expect(repairAnswer.parse(JSON.parse(replaced.out)).km).toBe(187_100);
    expect(
      await on(DEMO, 'repair', 'record', '--job', 'XX-1', '--on', '2026-12-01', '--at', '187100'),
    ).toMatchObject({ code: 1 });
    expect(await on(DEMO, 'repair', 'juggle')).toMatchObject({ code: 2 });
  });

  it('has answers that the schemas describe', () => {
    expect(Object.keys(ANSWERS)).toEqual(expect.arrayContaining(['care', 'muster', 'repair']));
  });
});
