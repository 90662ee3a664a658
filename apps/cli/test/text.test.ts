import { describe, expect, it } from 'vitest';
import { paragraph, plain, table, WIDTH, wrap } from '../src/text/layout.ts';
import { widthOf } from '../src/text/width.ts';
import { runOn } from './support/memory-io.ts';
import { WAGON, WAGON_FILE } from './support/wagon.ts';

const ESCAPE = '\u001b';
/** What would move the cursor, paint, ring, hide or turn round the text of a terminal. */
const HARMFUL = /[\p{Cc}\p{Zl}\p{Zp}\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;
const LONG = 'x'.repeat(180);
const WIDE = '荷'.repeat(150);
/** Red, clear screen, a new title for the window, a bell, a carriage return, right-to-left. */
const NASTY = 'red\u001b[31m\u001b[2J\u001b]0;title\u0007 back\r over \u202e turned \u0000 \u009b5m end';

/** The wagon with every name of the garage exchanged. */
function named(name: string): string {
  return WAGON.replace(/name: [^,}\n]+/g, `name: ${JSON.stringify(name)}`);
}

function widest(text: string): string {
  return text.split('\n').reduce((most, line) => (widthOf(line) > widthOf(most) ? line : most), '');
}

const COMMANDS: readonly (readonly [string, readonly string[]])[] = [
  ['plan --all', ['plan', WAGON_FILE, '--all']],
  ['plan in inches', ['plan', WAGON_FILE, '--units', 'inch']],
  ['why a belonging', ['why', WAGON_FILE, 'brace']],
  ['why a job', ['why', WAGON_FILE, 'WT-01']],
  ['why a failure', ['why', WAGON_FILE, 'tread-puncture']],
  ['curve', ['curve', WAGON_FILE, '--points', '3']],
  ['gaps', ['gaps', WAGON_FILE]],
  ['sure', ['sure', WAGON_FILE, '--draws', '5', '--sizes', '2']],
  ['simulate', ['simulate', WAGON_FILE, '--trips', '200', '--against', '45 kg']],
  ['load', ['load', WAGON_FILE, '--without-kit']],
  ['card of a job', ['card', WAGON_FILE, 'WT-01', '--with', 'everything', '--dark']],
  ['card of a symptom', ['card', WAGON_FILE, '--symptom', 'tyre-flat', '--with', 'everything']],
  ['card: all symptoms', ['card', WAGON_FILE, '--symptom']],
  ['check', ['check', WAGON_FILE]],
];

describe('text for a terminal', () => {
  for (const [kind, name] of [
    ['escape codes and one long word', `${NASTY} ${'x'.repeat(120)}`],
    ['wide letters and many words', `${WIDE.slice(0, 90)} ${'a long name '.repeat(9).trim()}`],
  ] as const) {
    it.each(COMMANDS)(
      `with names of ${kind}: %s stays within 100 columns and paints nothing`,
      async (_, argv) => {
        const ran = await runOn({ files: { [WAGON_FILE]: named(name) } }, ...argv);
        expect(ran.err).toBe('');
        expect(ran.code).toBe(0);
        expect(widthOf(widest(ran.out)), widest(ran.out)).toBeLessThanOrEqual(WIDTH);
        expect(HARMFUL.exec(ran.out.replaceAll('\n', ''))).toBeNull();
        expect(ran.out.split('\n').length).toBeGreaterThan(3);
      },
    );
  }

  it('lists and tables stay within 100 columns', async () => {
    const all = await runOn({}, 'tables');
    const ids = [...all.out.matchAll(/^ {2}([a-z][a-z0-9-]+) /gm)].map(([, id = '']) => id);
    expect(ids.length).toBeGreaterThan(60);
    for (const id of ids) {
      const { out, code } = await runOn({}, 'tables', id);
      expect(code, id).toBe(0);
      expect(widthOf(widest(out)), `${id}: ${widest(out)}`).toBeLessThanOrEqual(WIDTH);
    }
    expect(widthOf(widest(all.out))).toBeLessThanOrEqual(WIDTH);
  });

  it('refusals stay within 100 columns and say hostile names harmlessly', async () => {
    const torn = named(NASTY).replace(
      'vehicle: wagon, place: wheel-nut',
      `vehicle: "${LONG}", place: wheel-nut`,
    );
    for (const text of [torn, `${NASTY}: [`, named(LONG).replace('km: 260', 'km: -260')]) {
      const ran = await runOn({ files: { [WAGON_FILE]: text } }, 'plan', WAGON_FILE);
      expect(ran.code).toBe(1);
      expect(widthOf(widest(ran.err)), widest(ran.err)).toBeLessThanOrEqual(WIDTH);
      expect(HARMFUL.exec(ran.err.replaceAll('\n', ''))).toBeNull();
    }
    const named2 = `no${ESCAPE}[31m-such-file-${LONG}.yaml`;
    const ran = await runOn({}, 'plan', named2);
    expect(ran.code).toBe(1);
    expect(widthOf(widest(ran.err))).toBeLessThanOrEqual(WIDTH);
    expect(HARMFUL.exec(ran.err.replaceAll('\n', ''))).toBeNull();
  });

  it('import says hostile lines harmlessly', async () => {
    const list = `\u202e turned \u009b5m\n17 mm spanner ${LONG}\n${WIDE}\n1/2 deep sockets 17 19\n`;
    const files = { [WAGON_FILE]: WAGON, 'list.txt': list };
    const ran = await runOn({ files }, 'import', WAGON_FILE, 'list.txt');
    expect(ran.code).toBe(0);
    expect(widthOf(widest(ran.out)), widest(ran.out)).toBeLessThanOrEqual(WIDTH);
    expect(HARMFUL.exec(ran.out.replaceAll('\n', ''))).toBeNull();
  });

  it('help fits 100 columns, on any terminal', async () => {
    for (const command of ['', 'plan', 'why', 'curve', 'gaps', 'load', 'tables', 'import', 'check']) {
      const { out, code } = await runOn({}, ...(command === '' ? [] : [command]), '--help');
      expect(code).toBe(0);
      expect(out).toContain('Usage: waymend');
      expect(widthOf(widest(out)), widest(out)).toBeLessThanOrEqual(WIDTH);
    }
  });
});

describe('weight and colour', () => {
  const bold = new RegExp(`${ESCAPE}\\[(1|22)m`, 'g');
  it('a terminal gets bold and nothing else; anything else gets no code at all', async () => {
    const files = { [WAGON_FILE]: WAGON };
    const painted = await runOn({ files, colour: true }, 'plan', WAGON_FILE);
    const bare = await runOn({ files }, 'plan', WAGON_FILE);
    expect(bare.out).not.toContain(ESCAPE);
    expect(painted.out.match(bold)?.length ?? 0).toBeGreaterThan(4);
    expect(painted.out.replace(bold, '')).toBe(bare.out);
  });
});

describe('progress', () => {
  it('goes to standard error only, and only where a line can be redrawn', async () => {
    const files = { [WAGON_FILE]: WAGON };
    const argv = ['curve', WAGON_FILE, '--points', '3'] as const;
    const shown = await runOn({ files, interactive: true }, ...argv);
    const silent = await runOn({ files }, ...argv);
    expect(shown.err).toContain('points ...');
    expect(silent.err).toBe('');
    expect(shown.out).toBe(silent.out);
  });
});

describe('the layout', () => {
  const cases: readonly (readonly [string, () => readonly string[]])[] = [
    ['a wrapped word', () => wrap(LONG, 40)],
    ['wrapped wide letters', () => wrap(`ab ${WIDE}`, 41)],
  ];
  it.each(cases)('%s is cut to the width and loses no letter', (_, lines) => {
    const made = lines();
    for (const line of made) expect(widthOf(line)).toBeLessThanOrEqual(41);
    expect(made.join('').replaceAll(' ', '').length).toBeGreaterThanOrEqual(150);
  });

  it('never cuts a letter of two code units in half', () => {
    const lines = wrap('🛠'.repeat(90), 33);
    expect(lines.join('')).toBe('🛠'.repeat(90));
    for (const line of lines) expect(line).not.toMatch(/[\ud800-\udbff]$/);
  });

  it('counts letters as a terminal draws them: wide ones two columns, accents and joiners none', () => {
    expect(widthOf('abc')).toBe(3);
    expect(widthOf('荷物')).toBe(4);
    expect(widthOf('e\u0301')).toBe(1);
    expect(widthOf('')).toBe(0);
  });

  it('a table shrinks its widest column until it fits, and wraps the growing one', () => {
    const rows = [[LONG, 'b'.repeat(60), 'word '.repeat(40)]];
    const lines = table([{ title: 'one' }, { title: 'two' }, { title: 'three', grow: true }], rows);
    for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(WIDTH);
    expect(lines.join('\n').match(/word/g)).toHaveLength(40);
    expect(lines[1]).toContain('…');
    expect(lines[1]?.trim().startsWith('xxx')).toBe(true);
  });

  it('a paragraph hangs under its first line', () => {
    const [first = '', second = ''] = paragraph('word '.repeat(60), 2, 4);
    expect(first).toMatch(/^ {2}word/);
    expect(second).toMatch(/^ {4}word/);
  });

  it('what would move the cursor becomes a space', () => {
    expect(plain(NASTY)).not.toMatch(HARMFUL);
    expect(plain('über 12 mm – größer')).toBe('über 12 mm – größer');
  });
});
