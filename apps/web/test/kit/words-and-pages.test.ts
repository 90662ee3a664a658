import i18next from 'i18next';
import { beforeAll, describe, expect, it } from 'vitest';
import { formatFor } from '../../src/format/use-format.ts';
import { differ, type KitCopy } from '../../src/places/kit/compare/differ.ts';
import { cureOf } from '../../src/places/kit/needs-plan.tsx';
import { groupedPages, pagesByHeight } from '../../src/places/kit/print/pages.ts';
import { enlarged, finePercent, tripsSentence } from '../../src/places/kit/sheet/worth-words.ts';
import { questionOf } from '../../src/shell/aim.ts';
import { openWords } from '../../src/words/words.ts';

const format = formatFor('metric', 'EUR', 'Nm');

beforeAll(() => openWords('british'));

describe('the answer as a sentence', () => {
  it.each([
    [0.155, 'About 1 trip in 6 needs help'],
    [0.59, 'About 6 trips in 10 need help'],
    [0.0034, 'About 1 trip in 290 needs help'],
    [0.00001, 'Fewer than 1 trip in 10,000 needs help'],
    [0, 'No trip needs help, by this model'],
  ])('%f: %s', (help, sentence) => {
    expect(tripsSentence(help, format, i18next.t)).toBe(sentence);
  });

  it('tells neighbours on the curve apart', () => {
    expect([0.1532, 0.1509, 0.00234].map(finePercent)).toEqual([
      '15.3\u00a0%',
      '15.1\u00a0%',
      '0.234\u00a0%',
    ]);
  });
});

describe('bars of a second list', () => {
  it('are enlarged by 1, 2 or 5 times a power of ten, and never past the first list', () => {
    expect(enlarged(0.2, 0.0007)).toBe(200);
    expect(enlarged(0.2, 0.15)).toBe(1);
    expect(enlarged(0.2, 0.04)).toBe(5);
    expect(enlarged(0.2, 0)).toBe(1);
  });
});

describe('questions', () => {
  it('[M6] the mass aims leave out the limit on mass', () => {
    expect(questionOf({ kind: 'best-chance', oneIn: 6 })).toEqual({ aim: { kind: 'best-chance' } });
    expect(questionOf({ kind: 'least-mass', oneIn: 8 })).toEqual({
      aim: { kind: 'least-mass', chance: 0.875 },
      limitGrams: null,
    });
    expect(questionOf({ kind: 'must-do', oneIn: 8 })).toMatchObject({ limitGrams: null });
  });
});

describe('sheets of paper', () => {
  it('hold every row once, in order', () => {
    const rows = Array.from({ length: 65 }, (_, i) => i);
    // Every tenth row takes three lines.
    const height = (row: number) => (row % 10 === 0 ? 30 : 10);
    const pages = pagesByHeight(rows, height, 200);
    expect(pages.flat()).toEqual(rows);
    for (const page of pages)
      expect(page.reduce((sum, row) => sum + height(row), 0)).toBeLessThanOrEqual(200);
    expect(pagesByHeight([1], () => 999, 200)).toEqual([[1]]);
    expect(pagesByHeight([], height, 200)).toEqual([]);
  });

  it('say a group again on a new sheet and never leave its name alone at the foot', () => {
    const groups = [
      { name: 'A', rows: [1, 2] },
      { name: 'B', rows: [3, 4, 5] },
    ];
    const pages = groupedPages(groups, 4);
    expect(pages).toEqual([
      [{ group: 'A' }, { row: 1 }, { row: 2 }],
      [{ group: 'B' }, { row: 3 }, { row: 4 }, { row: 5 }],
    ]);
    expect(groupedPages(groups, 3)).toEqual([
      [{ group: 'A' }, { row: 1 }, { row: 2 }],
      [{ group: 'B' }, { row: 3 }, { row: 4 }],
      [{ group: 'B' }, { row: 5 }],
    ]);
  });
});

describe('two kits side by side', () => {
  const kit = (items: KitCopy['items']): KitCopy => ({
    name: '',
    trip: '',
    vehicle: '',
    unaided: 0.9,
    proven: true,
    grams: 0,
    pieces: 0,
    spentCents: 0,
    gaps: 0,
    grossLeftKg: null,
    items,
  });

  it('differ by what only one brings, counting copies', () => {
    const a = kit([
      { id: 'strap', name: 'strap', grams: 300, copies: 3 },
      { id: 'belt', name: 'belt', grams: 250, copies: 1 },
      { id: 'jack', name: 'jack', grams: 3900, copies: 1 },
    ]);
    const b = kit([
      { id: 'strap', name: 'strap', grams: 100, copies: 1 },
      { id: 'belt', name: 'belt', grams: 250, copies: 1 },
      { id: 'oil', name: 'oil', grams: 4600, copies: 1 },
    ]);
    const { first, second, both } = differ(a, b);
    expect(first.map(({ id, copies, grams }) => [id, copies, grams])).toEqual([
      ['jack', 1, 3900],
      ['strap', 2, 200],
    ]);
    expect(second.map(({ id }) => id)).toEqual(['oil']);
    expect(both).toBe(1);
  });
});

describe('a refusal leads to the sheet that cures it', () => {
  it.each([
    ['belongings.w17.is', '/garage/belongings'],
    ['trips.loop.vehicle', '/garage/trip'],
    ['vehicles.packer.tyre', '/vehicle'],
    ['people.wren', '/garage/people'],
    ['', '/garage/trip'],
  ])('%s: %s', (path, to) => {
    expect(cureOf(path).to).toBe(to);
  });
});
