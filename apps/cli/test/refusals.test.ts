import { describe, expect, it } from 'vitest';
import type { MachineOptions } from './support/memory-io.ts';
import { runOn } from './support/memory-io.ts';
import { lineOf, WAGON, WAGON_FILE, wagonWith } from './support/wagon.ts';

interface Refused {
  readonly what: string;
  readonly text: string | Uint8Array;
  readonly says: RegExp;
  /** Line the sentence must name; left out where the file has none. */
  readonly line?: number;
}

const LEGS = WAGON.slice(WAGON.indexOf('legs:\n'), WAGON.indexOf('fittings:'));
const TRIP = WAGON.slice(WAGON.indexOf('trips:\n'), WAGON.indexOf('legs:'));
const SMALL = 'waymend: 1\nname: small\n';

/** One passage of the wagon changed, and the line on which the change stands. */
function changed(passage: string, instead: string, at = instead): { text: string; line: number } {
  const text = wagonWith(passage, instead);
  return { text, line: lineOf(text, at.trim()) };
}

const REFUSED: readonly Refused[] = [
  { what: 'an unknown version', ...changed('waymend: 1', 'waymend: one'), says: /no file version "one"/ },
  {
    what: 'a newer version',
    ...changed('waymend: 1', 'waymend: 7'),
    says: /written by a newer Waymend \(file version 7.*update Waymend.*not touched/,
  },
  { what: 'no version', text: WAGON.replace('waymend: 1\n', ''), line: 1, says: /version is missing/ },
  {
    what: 'broken YAML',
    ...changed('brace: { is: CB-W }', 'brace: { is: CB-W', 'stand: { is: ST-1, copies: 2 }'),
    line: lineOf(WAGON, 'brace: {') + 1,
    says: /the indentation does not fit|bracket/,
  },
  {
    what: 'two belongings of one id',
    ...changed('jack-board: {', 'jack: {', 'jack: { is: JBASE }'),
    says: /"jack" stands here and already on line \d+/,
  },
  {
    what: 'a reference that leads nowhere',
    ...changed('loads: [water, camp]', 'loads: [water, camps]'),
    says: /names the load "camps", which is not in the file; did you mean "camp"\?/,
  },
  {
    what: 'a thing the catalogue does not know',
    ...changed('brace: { is: CB-W }', 'brace: { is: CB-X9 }'),
    says: /"CB-X9", which the catalogue does not know/,
  },
  {
    what: 'a negative mass',
    ...changed('grams: 80', 'grams: -80'),
    says: /grams of cw14 is -80 g; it cannot be negative/,
  },
  {
    what: 'a 40 kg socket (asked about)',
    ...changed('s17: { is: SK3-17,', 's17: { is: SK3-17, grams: 40 kg,'),
    says: /s17 .*weighs 40 kg where about 58 g is usual; if it is right, add "confirmed: true"/,
  },
  {
    what: 'a size of no standard (asked about)',
    ...changed('sump-plug, size: 17 mm', 'sump-plug, size: 17.3 mm'),
    says: /size 17\.3 mm, which is in no standard, 17 mm is the nearest; measure again/,
  },
  {
    what: 'a unit nobody knows',
    ...changed('grams: 900', 'grams: 2 furlongs'),
    says: /grams of belonging jar.*furlongs/,
  },
  {
    what: 'a unit of something else',
    ...changed('torqueNm: 120', 'torqueNm: 120 kg'),
    says: /torqueNm of fitting wheel-nuts/,
  },
  {
    what: 'a unit that two countries read differently',
    ...changed('grams: 900', 'grams: 2 gallons'),
    says: /grams of belonging jar.*gallon/,
  },
  {
    what: 'a field nobody knows',
    ...changed('weighed: true, berth: boot', 'wieghed: true, berth: boot'),
    says: /nothing called "wieghed"; did you mean "weighed"\?/,
  },
  {
    what: 'no vehicle',
    text: `${SMALL}people:\n  a: { name: A, skill: 2 }\n`,
    says: /there is no vehicle; add one under vehicles/,
  },
  {
    what: 'no trip',
    text: WAGON.replace(TRIP, '').replace(LEGS, ''),
    says: /there is no trip; add one under trips/,
  },
  {
    what: 'a route of nothing',
    text: WAGON.replace(LEGS, ''),
    line: lineOf(WAGON.replace(LEGS, ''), '  coast:'),
    says: /trip coast has no legs, so its route is 0 km/,
  },
  {
    what: 'legs of 0 km',
    text: WAGON.replaceAll(/km: (260|340|90)/g, 'km: 0'),
    line: lineOf(WAGON, '  coast:'),
    says: /the route of trip coast is 0 km/,
  },
  {
    what: 'a leg that runs backwards',
    ...changed('km: 260', 'km: -260'),
    says: /km of out is -260 km; it cannot be negative/,
  },
  {
    what: 'nobody aboard',
    ...changed('people: [mira, tomas]', 'people: []'),
    says: /people of trip coast needs at least 1 entry/,
  },
  {
    what: 'brackets within brackets',
    text: `${SMALL}belongings: ${'['.repeat(60)}${']'.repeat(60)}\n`,
    line: 3,
    says: /nested more than 12 deep/,
  },
  {
    what: 'a bomb of references',
    text: `${SMALL}a: &a [x, x, x, x]\nb: &b [*a, *a, *a, *a]\nc: &c [*b, *b, *b, *b]\nd: [*c, *c, *c, *c]\n`,
    line: 4,
    says: /stands for another part of the file; write the part out/,
  },
  { what: 'a binary file', text: new Uint8Array([0x7f, 0x45, 0x4c, 0x46, 0, 0, 1, 2]), says: /is not text/ },
  { what: 'a spreadsheet', text: new Uint8Array([0x50, 0x4b, 3, 4, 20, 0]), says: /read it with import/ },
  { what: 'an empty file', text: '', says: /is empty/ },
  { what: 'a file of comments', text: '# nothing here\n', says: /nothing but comments/ },
  { what: 'a list instead of a garage', text: '- 17 mm\n- 19 mm\n', line: 1, says: /is not a garage/ },
];

describe('a garage that is refused', () => {
  it.each(REFUSED)(
    '$what: one plain sentence with file and line, exit code 1, nothing written',
    async (row) => {
      const files = { [WAGON_FILE]: row.text };
      for (const argv of [
        ['plan', WAGON_FILE],
        ['plan', WAGON_FILE, '--json', '--problem', 'problem'],
        ['check', WAGON_FILE],
      ]) {
        const ran = await runOn({ files }, ...argv);
        expect(ran.code).toBe(1);
        expect(ran.out).toBe('');
        expect(ran.written).toEqual([]);
        const said = ran.err.replace(/\s+/g, ' ');
        expect(said).toMatch(row.says);
        expect(said).toContain(row.line === undefined ? WAGON_FILE : `${WAGON_FILE}, line ${row.line}:`);
        expect(ran.err.trimEnd()).toMatch(/[.?!]$/);
        expect(said).not.toMatch(/ at .*\.ts|Error:|undefined|\[object/);
      }
    },
  );

  it('says at most twenty things at once, one a line', async () => {
    const text = WAGON.replaceAll('status: measured', 'status: guessed');
    const many = text.replaceAll(/\{ is: CW-/g, '{ is: CX-').replaceAll('state: ready', '');
    const ran = await runOn({ files: { [WAGON_FILE]: many } }, 'check', WAGON_FILE);
    expect(ran.code).toBe(1);
    expect(ran.err.match(/wagon\.garage\.yaml, line/g)?.length).toBeLessThanOrEqual(20);
    expect(ran.err.match(/cannot be "guessed"/g)?.length).toBeGreaterThan(3);
  });
});

describe('a file that cannot be read', () => {
  it('is not there', async () => {
    const ran = await runOn({}, 'plan', 'nowhere.yaml');
    expect(ran).toMatchObject({ code: 1, out: '', written: [] });
    expect(ran.err).toBe('There is no file nowhere.yaml; check the name.\n');
  });

  it('is far too large', async () => {
    const ran = await runOn({ huge: { [WAGON_FILE]: 3_000_000_000 } }, 'plan', WAGON_FILE);
    expect(ran).toMatchObject({ code: 1, out: '', written: [] });
    expect(ran.err).toMatch(/^wagon\.garage\.yaml holds 3000 MB; .* was not read\.\n$/);
  });
});

describe('a question that makes no sense', () => {
  const second = wagonWith(
    'legs:\n',
    '  second: { name: Again, vehicle: wagon, people: [mira] }\nlegs:\n',
  ).replace('legs:\n', 'legs:\n  again: { trip: second, order: 1, km: 50, surface: gravel, helpKm: 20 }\n');

  it('several trips and none named: says which there are', async () => {
    const ran = await runOn({ files: { [WAGON_FILE]: second } }, 'plan', WAGON_FILE);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.err).toContain('say which with --trip: coast, second');
    const named = await runOn(
      { files: { [WAGON_FILE]: second } },
      'load',
      WAGON_FILE,
      '--without-kit',
      '--trip',
      'second',
    );
    expect(named.code).toBe(0);
    expect(named.out).toContain('Again');
  });

  it.each([
    ['a trip that is not there', ['--trip', 'moon'], /There is no trip "moon".*coast/],
    ['a limit in words', ['--limit', 'much'], /much/],
    ['a limit that two countries read differently', ['--limit', '2 gallons'], /gallon/],
    ['a limit in litres', ['--limit', '20 litres'], /litres/],
    ['a negative limit', ['--limit=-5 kg'], /--limit wants a mass from 0 to 10,000 kg, not "-5 kg"/],
    ['a chance of certainty', ['--chance', '100%'], /not a chance; write 95% or 0\.95, less than certain/],
    ['a chance of nothing', ['--chance', '0'], /not a chance/],
    ['a chance in words', ['--chance', 'good'], /"good" is not a chance/],
    ['a negative budget', ['--budget=-3'], /--budget wants a number from 0/],
    ['a budget in words', ['--budget', 'some'], /--budget wants a number/],
    ['no time at all', ['--seconds', '0'], /--seconds wants a number from 0\.05/],
    ['a volume beyond a house', ['--volume', '1e9'], /--volume wants a number from 0 to 100000/],
    ['a job nobody knows', ['--must', 'ZZ-99'], /There is no job ZZ-99; waymend tables jobs lists them/],
  ])('%s', async (_, options, says) => {
    const ran = await runOn({ files: { [WAGON_FILE]: WAGON } }, 'plan', WAGON_FILE, ...options);
    expect(ran.err.replace(/\s+/g, ' ')).toMatch(says);
    expect(ran).toMatchObject({ code: 1, out: '', written: [] });
  });

  it.each([
    ['points below two', ['--points', '1']],
    ['half a point', ['--points', '2.5']],
    ['points in words', ['--points', 'many']],
  ])('curve: %s', async (_, options) => {
    const ran = await runOn({ files: { [WAGON_FILE]: WAGON } }, 'curve', WAGON_FILE, ...options);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.err).toContain('--points wants a whole number from 2 to 60');
  });

  it('why: nothing of that name, and several of it', async () => {
    const files = { [WAGON_FILE]: WAGON };
    const none = await runOn({ files }, 'why', WAGON_FILE, 'zeppelin');
    expect(none).toMatchObject({ code: 1, out: '' });
    expect(none.err).toContain('Nothing in this plan is called "zeppelin"');
    const several = await runOn({ files }, 'why', WAGON_FILE, 'combination wrench');
    expect(several).toMatchObject({ code: 1, out: '' });
    expect(several.err).toMatch(/"combination wrench" could be .*give one id/s);
  });

  it('tables: a table that is not there', async () => {
    const ran = await runOn({}, 'tables', 'no-such-table');
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.err).toContain('There is no table "no-such-table"; waymend tables lists them all.');
  });
});

describe('wrong usage', () => {
  it.each([
    ['no command', [], /Usage: waymend/],
    ['a command nobody knows', ['pack'], /unknown command 'pack'/],
    ['an option nobody knows', ['plan', WAGON_FILE, '--fast'], /unknown option '--fast'/],
    ['no file', ['plan'], /missing required argument/],
    ['one argument too many', ['check', WAGON_FILE, 'other.yaml'], /too many arguments/],
    ['a unit style nobody knows', ['plan', WAGON_FILE, '--units', 'furlongs'], /metric, inch/],
    ['an option without its value', ['plan', WAGON_FILE, '--limit'], /argument missing/],
  ])('%s: exit code 2', async (_, argv, says) => {
    const ran = await runOn({ files: { [WAGON_FILE]: WAGON } }, ...argv);
    expect(ran.code).toBe(2);
    expect(ran.out + ran.err).toMatch(says);
    expect(ran.written).toEqual([]);
  });

  it('asking for help or the version is no mistake', async () => {
    expect((await runOn({}, '--help')).code).toBe(0);
    const version = await runOn({}, '--version');
    expect(version.code).toBe(0);
    expect(version.out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});

describe('limits that admit no kit', () => {
  const files = { [WAGON_FILE]: WAGON };
  const full = wagonWith('boot, xMm: 2700, limitKg: 250', 'boot, xMm: 2700, limitKg: 115');

  it.each<readonly [string, MachineOptions, readonly string[], RegExp]>([
    ['mass', { files }, ['--limit', '10 kg'], /weighs (\d+(\.\d)?) kg more than the mass limit allows/],
    ['no mass at all', { files }, ['--limit', '0'], /weighs (\d+(\.\d)?) kg more than the mass limit allows/],
    ['volume', { files }, ['--volume', '5'], /takes (\d+(\.\d)?) l more than the volume limit allows/],
    ['a berth', { files: { [WAGON_FILE]: full } }, [], /berth "boot" would be ([\d.]+ k?g) over its limit/],
    [
      'a chance nothing reaches',
      { files },
      ['--chance', '99.99%'],
      /No kit reaches a chance of 99\.99 %; the best that can be had is about [\d.]+ %/,
    ],
  ])('%s: exit code 3, and by how much', async (_, machine, options, says) => {
    const ran = await runOn(machine, 'plan', WAGON_FILE, ...options);
    expect(ran.code).toBe(3);
    expect(ran.out).toBe('');
    expect(ran.err).toContain('No kit satisfies these limits.');
    expect(ran.err.replace(/\s+/g, ' ')).toMatch(says);
    expect(ran.written).toEqual([]);
  });

  it('giving way by what is said is enough, and by less is not', async () => {
    const { err } = await runOn({ files }, 'plan', WAGON_FILE, '--limit', '10 kg');
    const more = Number(/weighs ([\d.]+) kg more/.exec(err)?.[1]);
    const enough = await runOn({ files }, 'plan', WAGON_FILE, '--limit', `${10 + more} kg`);
    expect(enough.code).toBe(0);
    const short = await runOn({ files }, 'plan', WAGON_FILE, '--limit', `${10 + more - 0.2} kg`);
    expect(short.code).toBe(3);
  });

  it.each(['gaps', 'load', 'curve'])('%s says the same', async (command) => {
    const ran = await runOn({ files }, command, WAGON_FILE, '--limit', '10 kg');
    expect(ran.code).toBe(3);
    expect(ran.out).toBe('');
    expect(ran.err).toMatch(/kg more than the mass limit allows/);
  });
});

describe('what is written', () => {
  const files = { [WAGON_FILE]: WAGON, 'list.txt': '1/2 deep sockets 17 19 21\n' };

  it('import writes the whole garage once, and only when asked', async () => {
    const ran = await runOn({ files }, 'import', WAGON_FILE, 'list.txt', '--write');
    expect(ran.code).toBe(0);
    expect(ran.written.map(({ path }) => path)).toEqual([WAGON_FILE]);
    const again = await runOn(
      { files: { [WAGON_FILE]: ran.written[0]?.data ?? '' } },
      'check',
      WAGON_FILE,
      '--json',
    );
    expect(again.code).toBe(0);
    expect(again.out).toContain('"belongings": 52');
  });

  it('import leaves a garage of a newer version alone', async () => {
    const newer = { ...files, [WAGON_FILE]: WAGON.replace('waymend: 1', 'waymend: 2') };
    const ran = await runOn({ files: newer }, 'import', WAGON_FILE, 'list.txt', '--write');
    expect(ran).toMatchObject({ code: 1, out: '', written: [] });
    expect(ran.err).toContain('newer Waymend');
  });

  it('import starts no garage where one is', async () => {
    const ran = await runOn({ files }, 'import', WAGON_FILE, 'list.txt', '--new', 'Mine', '--write');
    expect(ran).toMatchObject({ code: 1, written: [] });
    const fresh = await runOn({ files }, 'import', 'new.yaml', 'list.txt', '--new', 'Mine', '--write');
    expect(fresh.code).toBe(0);
    expect(fresh.written[0]?.data).toContain('name: Mine');
  });

  it.each([
    ['import', ['import', WAGON_FILE, 'list.txt', '--write'], WAGON_FILE],
    ['plan --problem', ['plan', WAGON_FILE, '--problem', 'p'], 'p.mps'],
  ])('%s says in a sentence when it may not write', async (_, argv, path) => {
    const ran = await runOn({ files, locked: [path] }, ...argv);
    expect(ran).toMatchObject({ code: 1, out: '', written: [] });
    expect(ran.err).toBe(`${path} cannot be written (EACCES); what was there is as it was.\n`);
  });

  it('plan --problem writes the problem in both forms, and the plan is still the answer', async () => {
    const ran = await runOn({ files }, 'plan', WAGON_FILE, '--problem', 'p', '--json');
    expect(ran.code).toBe(0);
    expect(ran.written.map(({ path }) => path)).toEqual(['p.mps', 'p.json']);
    expect(ran.written[0]?.data).toMatch(/^NAME/m);
    expect(JSON.parse(ran.written[1]?.data ?? '')).toMatchObject({ schema: 'waymend.problem/1' });
    expect(JSON.parse(ran.out)).toMatchObject({ schema: 'waymend.plan/1' });
  });
});
