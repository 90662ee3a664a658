import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SHIPPED_CATALOGUE } from '../../src/import/catalogue.ts';
import { readList } from '../../src/import/read-list.ts';
import { containing, read, said } from './said.ts';
import { spent } from '../processor-time.ts';

describe('sizes', () => {
  it.each([
    ['combination wrenches 8-12 except 11', 'CW-8, CW-9, CW-10, CW-12'],
    ['combination wrenches 8-12, not 9 and 11', 'CW-8, CW-10, CW-12'],
    ['1/2 deep sockets 17 19 21', 'SD2-17, SD2-19, SD2-21'],
    ['sockets 17,19,21 1/2 dr deep', 'SD2-17, SD2-19, SD2-21'],
    ['½" deep sockets 17 19', 'SD2-17, SD2-19'],
    ['3/8 sockets 3/8 7/16 1/2', 'SKI3-3/8, SKI3-7/16, SKI3-1/2'],
    ['1/4 drive socket 5,5 mm', 'SK4-5.5'],
    ['1-1/16 in combination wrench', 'CWI-1-1/16'],
    ['1 1/16" combination wrench', 'CWI-1-1/16'],
    ['hex keys 3-10', 'HK-3, HK-4, HK-5, HK-6, HK-8, HK-10'],
    ['T-bits T20-T30', 'TB-20, TB-25, TB-27, TB-30'],
    ['10mm socket x4', '4 SK3-10'],
    ['4 x 10mm socket', '4 SK3-10'],
    ['3 sockets 10 mm', '3 SK3-10'],
    ['3 sockets 10 12 13 3/8 drive', 'SK3-10, SK3-12, SK3-13'],
    ['sockets 10 12 (3/8 shallow)', 'SK3-10, SK3-12'],
    ['flare spanner 13x14', 'FN-13x14'],
    ['locking pliers 180 mm', 'PR-L18'],
    ['2x locking pliers', '2 PR-L25'],
  ])('%s', (line, expected) => {
    expect(said(read(line))).toBe(expected);
  });

  it('gives a size that the catalogue has not its real size and a mass between its neighbours', () => {
    const [match] = read('25 mm combination wrench').matches;
    const grams = (id: string): number =>
      SHIPPED_CATALOGUE.belongings.find((b) => b.id === id)?.grams ?? Number.NaN;
    expect(match).toMatchObject({ catalogueId: 'CW-24', size: '25 mm', weighed: false });
    const mass = match?.kind === 'thing' ? (match.grams ?? 0) : 0;
    expect(mass).toBeGreaterThan(grams('CW-24'));
    expect(mass).toBeLessThan(grams('CW-27'));
  });

  it('gives an extension of another length its real length', () => {
    expect(said(read('3/8 extension 180 mm'))).toBe('EX3-250 (180 long)');
  });

  it('asks for the size where none is given, and whether a lone fraction is drive or size', () => {
    expect(read('1/2 drive sockets').notUnderstood[0]?.reason).toContain('no size is given');
    expect(read('1/2 socket').notUnderstood[0]?.reason).toContain('drive or the size');
  });

  it('is less sure of a drive it had to guess than of one it was told', () => {
    const guessed = read('10 mm socket').matches[0]?.confidence ?? 1;
    const told = read('10 mm socket 3/8 drive').matches[0]?.confidence ?? 0;
    expect(guessed).toBeLessThan(told);
  });
});

describe('masses, counts and notes', () => {
  it.each([
    ['3/8 ratchet 180 g', 180],
    ['3/8 ratchet (0.4 lb)', 181],
    ['3/8 ratchet, 7 oz', 198],
    ['3/8 ratchet 0,18 kg', 180],
  ])('%s', (line, grams) => {
    expect(read(line).matches).toEqual([
      expect.objectContaining({ catalogueId: 'RT-3', grams, weighed: true }),
    ]);
  });

  it('tells the mass of a thing from a mass in its name', () => {
    expect(read('fire extinguisher 1 kg').matches[0]).not.toHaveProperty('grams');
    expect(read('450 g ball peen hammer').matches[0]).not.toHaveProperty('grams');
  });

  it('takes the mass of several as that of several', () => {
    expect(read('2 x 17 mm combination wrenches 260 g').matches[0]).toMatchObject({ copies: 2, grams: 130 });
  });

  it('says so when a mass is far off', () => {
    const [match] = read('1/2 drive socket 19 mm 40 kg').matches;
    expect(match).toMatchObject({ catalogueId: 'SK2-19', grams: 40_000 });
    expect(match?.why).toContain('look at the mass again');
    expect(match?.confidence).toBeLessThan(0.7);
  });

  it('keeps brackets and remarks as a note', () => {
    expect(read('17 mm combination wrench (bent) - from grandpa').matches[0]?.note).toBe(
      'bent; from grandpa',
    );
  });
});

describe('lines', () => {
  it.each([
    ['side cutters, long nose pliers, circlip pliers', 'PR-SC, PR-LN, PR-CR'],
    ['bow shackles x 3 and one soft shackle', '3 SH-S, SH-T'],
    ['94 piece socket set', 'set box-94'],
    ['multimeter + zorgblatt', 'MM-1, ? zorgblatt'],
  ])('%s', (line, expected) => {
    expect(said(read(line))).toBe(expected);
  });

  it.each([
    ['spanner', 'wrench'],
    ['wrench', 'spanner'],
  ])('knows %s as well as the other word', (word) => {
    expect(said(read(`13 mm combination ${word}`))).toBe('CW-13');
  });

  it('lists what it does not understand with line, reason and the nearest thing', () => {
    const { notUnderstood, matches } = read('multimeter\n# not sure\nzorgblatt pliers\nwibble');
    expect(matches).toHaveLength(1);
    expect(notUnderstood).toEqual([
      {
        line: 3,
        text: 'zorgblatt pliers',
        reason: containing('"zorgblatt"'),
        suggestion: containing('pliers'),
      },
      { line: 4, text: 'wibble', reason: containing('"wibble"'), suggestion: null },
    ]);
  });

  it('suggests the nearest set for a set it does not know', () => {
    expect(read('96 piece socket set').notUnderstood[0]).toMatchObject({
      reason: containing('96 pieces'),
      suggestion: containing('94 pieces'),
    });
  });

  it('lets a heading say what lines of numbers are', () => {
    expect(said(read('1/2 deep sockets:\n17 19\n21'))).toBe('SD2-17, SD2-19, SD2-21');
  });

  it('drops nothing: every line that is not blank is matched, listed or a heading', () => {
    const word = fc.constantFrom(
      'sockets',
      '1/2',
      '17',
      '3/8"',
      'deep',
      'x2',
      'pliers',
      'wibble',
      '(old)',
      'and',
      ',',
      '8-19',
      'except',
      '16',
      'T20',
      'no',
      '#',
      ':',
      '1,5 kg',
      '-',
    );
    const line = fc.array(word, { maxLength: 7 }).map((words) => words.join(' '));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 6 }), (some) => {
        const lines = ['multimeter', ...some];
        const { matches, notUnderstood, headings } = read(lines.join('\n'));
        const seen = new Set([...matches, ...notUnderstood, ...headings].map((one) => one.line));
        const filled = lines.flatMap((text, i) => (text.trim() === '' ? [] : [i + 1]));
        expect([...seen].sort((a, b) => a - b)).toEqual(filled);
        for (const { confidence } of matches) {
          expect(confidence).toBeGreaterThan(0);
          expect(confidence).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (text) => {
        expect(typeof readList(text).ok).toBe('boolean');
      }),
      { numRuns: 500 },
    );
  });
});

describe('hostile lists', () => {
  it('refuses 50 MB at once, binary, nothing at all and a hundred thousand lines', () => {
    const start = spent();
    expect(readList('17 mm socket\n'.repeat(4_000_000))).toMatchObject({
      ok: false,
      error: { id: 'file-too-large' },
    });
    expect(spent() - start).toBeLessThan(400);
    expect(readList('a\u0000b')).toMatchObject({ ok: false, error: { id: 'file-binary' } });
    expect(readList(' ')).toMatchObject({ ok: false, error: { id: 'file-empty' } });
    expect(readList('socket\n'.repeat(100_000))).toMatchObject({ ok: false, error: { id: 'list-too-long' } });
  });

  it('lists one line of a million characters as too long instead of reading it', () => {
    const start = spent();
    expect(read(`pliers ${'ab '.repeat(300_000)}`).notUnderstood[0]?.reason).toContain('longer than 400');
    expect(spent() - start).toBeLessThan(2_000);
  });

  it.each([
    '__proto__',
    'constructor',
    'toString 17 mm',
    '=cmd|calc',
    '<script>alert(1)</script>',
    '${7*7}',
    '../../etc',
  ])('takes %s for words it does not know', (text) => {
    const { matches, notUnderstood } = read(text);
    expect(matches).toEqual([]);
    expect(notUnderstood).toHaveLength(1);
  });
});
