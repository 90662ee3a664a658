import { describe, expect, it } from 'vitest';
import type { AnyRow, Check } from '../src/shape/define-table.ts';
import { checkTable, defineTable, si, statusOf } from '../src/shape/define-table.ts';
import {
  agreesWith,
  between,
  everyRow,
  minNominalMax,
  oneOf,
  ratio,
  recomputed,
  rising,
  risingAcross,
  sameQuantity,
  unique,
} from '../src/shape/table-checks.ts';
import { measures, readNumber, toSi } from '../src/shape/table-units.ts';

const columns = {
  name: { title: 'Name', unit: 'text' },
  mm: { title: 'Length', unit: 'mm', gaps: true },
  inch: { title: 'Length', unit: 'in', status: 'recalled', gaps: true },
} as const;
const table = defineTable({
  id: 'lengths',
  title: 'Lengths',
  citation: { body: 'x', document: 'x', edition: 'x', part: 'x', obtained: 'original' },
  columns,
  rows: [
    { name: 'a', mm: 12.7, inch: '1/2' },
    { name: 'b', mm: 25.4, inch: '1', status: 'computed' },
    { name: 'c', mm: null, inch: '1-1/2' },
  ],
  checks: [unique('name')],
});

const names = (check: Check<(typeof table.rows)[number]>, rows = table.rows) => check.run(rows, columns);

describe('units', () => {
  it.each([
    [1, 'in', 0.0254],
    [1, 'lbf ft', 1.3558179483314],
    [1, 'psi', 6894.757293168361],
    [90, 'km/h', 25],
    [20, 'degC', 293.15],
    [50, '%', 0.5],
    [1, 'ohm/km', 0.001],
    [180, 'deg', Math.PI],
  ] as const)('%f %s is %f in SI', (value, unit, expected) => {
    expect(toSi(value, unit)).toBeCloseTo(expected, 10);
  });

  it('reads numbers as printed and nothing else', () => {
    expect([readNumber(1.5), readNumber('3'), readNumber('7/16'), readNumber('2-1/4')]).toEqual([
      1.5, 3, 0.4375, 2.25,
    ]);
    expect([readNumber(''), readNumber('1/'), readNumber('-1'), readNumber(Number.NaN)]).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(measures('in')).toBe(measures('mm'));
    expect(measures('in')).not.toBe(measures('mm2'));
    expect(() => toSi(1, 'text')).toThrow('words have no SI value');
  });
});

describe('status', () => {
  it('is the weaker of the row and the column, the table when neither says, a gap when empty', () => {
    const [a, b, c] = table.rows;
    if (a === undefined || b === undefined || c === undefined) throw new Error('three rows');
    expect(statusOf(table, a, 'mm')).toBe('verified');
    expect(statusOf(table, b, 'mm')).toBe('computed');
    expect(statusOf(table, b, 'inch')).toBe('recalled');
    expect(statusOf(table, c, 'mm')).toBe('gap');
    expect(si(table, c, 'mm')).toBeNull();
    expect(si(table, c, 'inch')).toBeCloseTo(0.0381, 12);
  });
});

describe('check helpers', () => {
  it('each holds on sound rows and names the breach on wrong ones', () => {
    const wrong = [
      { name: 'a', mm: 25.4, inch: '1/2' },
      { name: 'a', mm: 12.7, inch: '1/4' },
    ];
    const cases: readonly (readonly [Check<(typeof table.rows)[number]>, readonly string[]])[] = [
      [rising<'mm'>('mm'), ['a: mm 12.7 follows 25.4']],
      [rising<'inch'>('inch'), ['a: inch 0.25 follows 0.5']],
      [unique<'name'>('name'), ['a appears twice']],
      [between<'mm'>('mm', 10, 25.4), []],
      [between<'mm'>('mm', 12.7, 25.3), ['a: mm is 25.4']],
      [oneOf<'inch'>('inch', ['1/2', '1', '1-1/2']), ['a: inch 1/4 is not listed']],
      [ratio<'mm' | 'inch'>('mm', 'inch', 0.9, 1.1), ['a: mm / inch is 2.0000', 'a: mm / inch is 2.0000']],
      [sameQuantity<'mm' | 'inch'>('mm', 'inch', 0.01), ['a: mm / inch is 2.0000', 'a: mm / inch is 2.0000']],
      [sameQuantity<'mm' | 'name'>('mm', 'name', 0.01), ['mm and name do not measure the same thing']],
      [
        recomputed('mm', (row) => (row.name === 'b' ? 25.4 : 12.7), 0.01),
        ['a: mm 25.4, the formula gives 12.7000'],
      ],
      [everyRow<object>('never', () => null), []],
    ];
    for (const [check, breaches] of cases) {
      expect(check.run(wrong, columns), check.name).toEqual(breaches);
      if (check.name !== 'mm and name are one quantity' && !check.name.startsWith('mm between 12.7'))
        expect(names(check), check.name).toEqual([]);
    }
  });

  it('rising may be told to fall, to stand still, and to start afresh in each group', () => {
    const rows = [
      { g: 'x', v: 3 },
      { g: 'x', v: 3 },
      { g: 'y', v: 1 },
    ];
    const run = (check: Check<{ g: string; v: number }>) => check.run(rows, {});
    expect(run(rising('v', { falling: true, orEqual: true }))).toEqual([]);
    expect(run(rising('v', { falling: true }))).toEqual(['x: v 3 follows 3']);
    expect(run(rising('v', { within: 'g' }))).toEqual(['x: v 3 follows 3']);
    expect(run(rising('v', { within: 'g', orEqual: true }))).toEqual([]);
  });

  it('across and between limits', () => {
    const run = <R extends AnyRow>(check: Check<R>, row: R) =>
      check.run([row], {
        lo: { title: '', unit: 'mm' },
        mid: { title: '', unit: 'mm' },
        hi: { title: '', unit: 'mm' },
      });
    expect(run(risingAcross('lo', 'mid', 'hi'), { lo: 1, mid: 2, hi: 2 })).toEqual([]);
    expect(run(risingAcross('lo', 'mid', 'hi'), { lo: 1, mid: 3, hi: 2 })).toEqual(['1: 2 follows 3']);
    expect(run(minNominalMax({ min: 'lo', nominal: 'mid', max: 'hi' }), { lo: 1, mid: 2, hi: 3 })).toEqual(
      [],
    );
    expect(
      run(minNominalMax({ min: 'lo', nominal: 'mid', max: 'hi' }), { lo: 3, mid: 2, hi: 3 }),
    ).toHaveLength(1);
  });

  it('agreement with a table that shares no key is a fault, not a pass', () => {
    const other = defineTable({ ...table, columns, id: 'other', rows: [{ name: 'a', mm: 12, inch: null }] });
    expect(names(agreesWith(other, 'name', 'mm'))).toEqual(['a: mm 12.7, other has 12']);
    expect(names(agreesWith(other, 'name', 'mm', ['a']))).toEqual([]);
    const stranger = defineTable({
      ...table,
      columns,
      id: 'stranger',
      rows: [{ name: 'z', mm: 1, inch: null }],
    });
    expect(names(agreesWith(stranger, 'name', 'mm'))).toEqual(['no name is in stranger']);
  });

  it('a table without source, rows or checks is refused', () => {
    const bare = defineTable({
      ...table,
      id: 'Not Kebab',
      citation: { ...table.citation, edition: ' ', obtained: 'secondary' },
      columns,
      rows: [],
      checks: [],
    });
    expect(checkTable(bare).map((fault) => fault.message)).toEqual([
      '"Not Kebab" is not a kebab-case id',
      'edition is empty',
      'a table from a secondary source must say through what',
      'no rows',
      'no checks of its own',
    ]);
  });
});
