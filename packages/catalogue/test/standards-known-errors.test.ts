import { describe, expect, it } from 'vitest';
import type { AnyRow, Table } from '../src/shape/define-table.ts';
import { checkTable, defineTable, withRows } from '../src/shape/define-table.ts';
import { between, minNominalMax, rising, sameQuantity, sameScale } from '../src/shape/table-checks.ts';
import { AWG } from '../src/standards/awg.ts';
import { FLANGE_SCREWS_EN1665 } from '../src/standards/flange-screws-en1665.ts';
import { HEX_HEADS_DIN } from '../src/standards/hex-heads-din.ts';
import { HEX_HEADS_ISO } from '../src/standards/hex-heads-iso.ts';
import { HEX_LEAST_WIDTHS } from '../src/standards/hex-least-widths.ts';
import { HEX_NUTS_ISO } from '../src/standards/hex-nuts-iso.ts';
import { HEX_THIN_NUTS_ISO } from '../src/standards/hex-thin-nuts-iso.ts';
import { INCH_HEADS } from '../src/standards/inch-heads.ts';
import { METRIC_THREADS } from '../src/standards/metric-threads.ts';
import { WRENCH_OPENINGS_METRIC } from '../src/standards/wrench-openings-metric.ts';

/** The table with some cells of one row changed, the row found by its first column. */
function changed<R extends AnyRow>(table: Table<R>, first: string | number, cells: Partial<R>): Table<R> {
  const key = Object.keys(table.columns)[0] ?? '';
  const found = table.rows.some((row) => row[key] === first);
  if (!found) throw new Error(`${table.id} has no ${first}`);
  return withRows(
    table,
    table.rows.map((row) => (row[key] === first ? { ...row, ...cells } : row)),
  );
}

/** Names of the checks that refuse the table; the sound table must pass first, or the refusal proves nothing. */
function refusedBy<R extends AnyRow>(sound: Table<R>, wrong: Table<R>): readonly string[] {
  expect(checkTable(sound)).toEqual([]);
  return [...new Set(checkTable(wrong).map((fault) => fault.check))];
}

const CHANGED_1982 = 'the four sizes that changed: ISO 272:1982';

describe('errors found in widely copied open data are refused', () => {
  // FreeCAD fasteners workbench, iso4014head, iso4017head and iso4032def: M14 = 22.
  it('1: a widely copied open CSV of ISO 4014, ISO 4017 and ISO 4032 has 22 mm on M14', () => {
    expect(refusedBy(HEX_HEADS_ISO, changed(HEX_HEADS_ISO, 'M14', { size: 22 }))).toContain(CHANGED_1982);
    expect(refusedBy(HEX_NUTS_ISO, changed(HEX_NUTS_ISO, 'M14', { size: 22 }))).toEqual(
      expect.arrayContaining([CHANGED_1982, 'size agrees with hex-heads-iso']),
    );
  });

  // FreeCAD fasteners workbench, iso4014head: M64 = 55.
  it('2a: a widely copied open CSV of ISO 4014 heads has 55 mm on M64, where others have 95', () => {
    const longer = (size: number) =>
      withRows(HEX_HEADS_ISO, [...HEX_HEADS_ISO.rows, { thread: 'M64', size, agree: 1, of: 1 }]);
    expect(checkTable(longer(95))).toEqual([]);
    expect(refusedBy(HEX_HEADS_ISO, longer(55))).toEqual(['width rises, 1.45 to 2.1 of the thread']);
  });

  // FreeCAD fasteners workbench, iso4017head and din933def: M3.5 = 5.5.
  it('2b: open CSVs of ISO 4017 and DIN 933 have 5.5 mm on M3.5, where others have 6', () => {
    for (const table of [HEX_HEADS_ISO, HEX_HEADS_DIN]) {
      expect(refusedBy(table, changed(table, 'M3.5', { size: 5.5 }))).toContain(
        'width rises, 1.45 to 2.1 of the thread',
      );
    }
  });

  // FreeCAD fasteners workbench, din933def: corners of 18 and 34 mm heads on 19 and 32 mm ones.
  it('3: an open CSV of DIN 933 carries the corners of other heads on M12 and M22', () => {
    const corners = ['corners / size between 1.08 and 1.1547'];
    expect(refusedBy(HEX_HEADS_DIN, changed(HEX_HEADS_DIN, 'M12', { corners: 20.1 }))).toEqual(corners);
    expect(refusedBy(HEX_HEADS_DIN, changed(HEX_HEADS_DIN, 'M22', { corners: 37.72 }))).toEqual(corners);
  });

  // FreeCAD fasteners workbench, asmeb18.2.2.4def: least widths, and from 1-3/4 on the next smaller nut (60.706 mm).
  it('4: an open CSV of ASME B18.2.2 nuts has least widths, and the wrong row from 1-3/4 in on', () => {
    expect(refusedBy(INCH_HEADS, changed(INCH_HEADS, '1/4', { nut: 0.428 }))).toContain(
      'head, nut, squareNut, squareBolt, flange in whole sixteenths',
    );
    expect(refusedBy(INCH_HEADS, changed(INCH_HEADS, '1-3/4', { nut: 60.706 / 25.4 }))).toContain(
      'nut / diameter between 1.49 and 1.76',
    );
    expect(checkTable(changed(INCH_HEADS, '1-3/4', { nut: '2-5/8' }))).toEqual([]);
  });

  // BOLTS, hexscrew2: M14 = 22, M22 = 32.
  it('5a: an open parts library has the DIN widths of M14 and M22 under ISO 4017', () => {
    expect(refusedBy(HEX_HEADS_ISO, changed(HEX_HEADS_ISO, 'M14', { size: 22 }))).toEqual([CHANGED_1982]);
    expect(refusedBy(HEX_HEADS_ISO, changed(HEX_HEADS_ISO, 'M22', { size: 32 }))).toEqual([CHANGED_1982]);
  });

  // BOLTS, nut.blt: d1 of M30 = 20 and of M52 = 42.
  it('5b: an open parts library gives M30 thin nuts a 20 mm thread and M52 ones 42 mm', () => {
    const name = 'the diameter is the one in the name';
    expect(refusedBy(METRIC_THREADS, changed(METRIC_THREADS, 'M30', { diameter: 20 }))).toContain(name);
    const last = METRIC_THREADS.rows.find((row) => row.thread === 'M36');
    if (last === undefined) throw new Error('M36 is gone');
    const more = (diameter: number) =>
      withRows(METRIC_THREADS, [
        ...METRIC_THREADS.rows,
        { ...last, thread: 'M52', diameter, coarse: 5, fine1: 4, areaCoarse: 1757.8, areaFine1: 1828.2 },
      ]);
    expect(checkTable(more(52))).toEqual([]);
    expect(checkTable(more(42)).map((fault) => fault.check)).toContain(name);
  });

  // bd_warehouse, iso4035: M10 = 17, M12 = 19, M22 = 32.
  it('6a: an open CSV of ISO 4035 thin nuts has the DIN widths', () => {
    for (const [thread, size] of [
      ['M10', 17],
      ['M12', 19],
      ['M22', 32],
    ] as const) {
      expect(refusedBy(HEX_THIN_NUTS_ISO, changed(HEX_THIN_NUTS_ISO, thread, { size }))).toEqual([
        CHANGED_1982,
        'size agrees with hex-nuts-iso',
      ]);
    }
  });

  // bd_warehouse, din931: 3.02, 3.82 and 4.82 where the nominal widths are 3.2, 4 and 5.
  it('6b: an open CSV of DIN 931 has least widths on its small sizes', () => {
    const smaller = (widths: readonly number[]) =>
      withRows(HEX_HEADS_DIN, [
        ...['M1.6', 'M2', 'M2.5'].map((thread, i) => ({
          thread,
          size: widths[i] ?? Number.NaN,
          corners: null,
          agree: 1,
          of: 1,
        })),
        ...HEX_HEADS_DIN.rows,
      ]);
    expect(checkTable(smaller([3.2, 4, 5]))).toEqual([]);
    const faults = checkTable(smaller([3.02, 3.82, 4.82]));
    expect(faults.map((fault) => fault.check)).toEqual(Array(3).fill('nominal widths, not least ones'));
  });

  // BOSL2, metric hex head table.
  it('7: an open modelling library offers the DIN widths as its one table of metric heads', () => {
    const din = withRows(
      HEX_HEADS_ISO,
      HEX_HEADS_ISO.rows.map((row) => ({
        ...row,
        size: HEX_HEADS_DIN.rows.find((other) => other.thread === row.thread)?.size ?? row.size,
      })),
    );
    expect(checkTable(din).filter((fault) => fault.check === CHANGED_1982)).toHaveLength(4);
  });

  // A bolt size page on the web.
  it('8: a web page lists 32 mm on M22 as ISO 4014', () => {
    expect(refusedBy(HEX_HEADS_ISO, changed(HEX_HEADS_ISO, 'M22', { size: 32 }))).toEqual([CHANGED_1982]);
  });

  it('and the other way round: ISO widths are refused in the DIN table', () => {
    for (const [thread, size] of [
      ['M10', 16],
      ['M12', 18],
      ['M14', 21],
      ['M22', 34],
    ] as const) {
      const wrong = changed(HEX_HEADS_DIN, thread, { size });
      expect(checkTable(wrong).map((fault) => fault.check)).toContain(
        'the four sizes that changed: DIN before 1982',
      );
    }
  });
});

/**
 * A published sieve table in a widely used fluids library: one column headed mm turns to metres part-way down, one inch
 * column is 1000 times too small in every row, and in some rows the least wire exceeds the nominal one.
 */
describe('unit slips of a published sieve table are refused', () => {
  const sieves = (rows: readonly { opening: number; inch: number; wire: number; least: number }[]) =>
    defineTable({
      id: 'sieves',
      title: 'Sieve openings (ASTM E11 values)',
      citation: {
        body: 'ASTM',
        document: 'E11',
        edition: 'as copied',
        part: 'table 1',
        obtained: 'secondary',
        through: 'test',
      },
      columns: {
        opening: { title: 'Opening', unit: 'mm' },
        inch: { title: 'Opening', unit: 'in' },
        wire: { title: 'Wire', unit: 'mm' },
        least: { title: 'Least wire', unit: 'mm' },
      },
      rows,
      checks: [
        rising('opening', { falling: true }),
        sameQuantity('opening', 'inch', 0.05),
        sameScale('wire', 2),
        minNominalMax({ min: 'least', nominal: 'wire' }),
        between('wire', 0.015, 10),
      ],
    });
  const sound = [
    { opening: 4, inch: 0.157, wire: 1.4, least: 1.2 },
    { opening: 2, inch: 0.0787, wire: 0.9, least: 0.77 },
    { opening: 1, inch: 0.0394, wire: 0.56, least: 0.48 },
  ];

  it('a column that turns from millimetres to metres part-way down', () => {
    const slip = sound.map((row, i) =>
      i < 2 ? row : { ...row, wire: row.wire / 1000, least: row.least / 1000 },
    );
    expect(refusedBy(sieves(sound), sieves(slip))).toEqual([
      'wire keeps its scale',
      'wire between 0.015 and 10',
    ]);
  });

  it('a column a thousand times too small in every row', () => {
    const slip = sound.map((row) => ({ ...row, inch: row.inch / 1000 }));
    expect(refusedBy(sieves(sound), sieves(slip))).toEqual(['opening and inch are one quantity']);
  });

  it('a least value above the nominal', () => {
    const slip = sound.map((row, i) => (i === 1 ? { ...row, least: 1.03 } : row));
    expect(refusedBy(sieves(sound), sieves(slip))).toEqual(['min <= nominal <= max']);
  });
});

describe('the same slips in our own tables are refused', () => {
  it('metres in a millimetre column', () => {
    const metres = withRows(
      AWG,
      AWG.rows.map((row) => ({ ...row, diameter: row.diameter / 1000 })),
    );
    expect(refusedBy(AWG, metres)).toContain('diameter between 0.5 and 12');
    expect(
      refusedBy(WRENCH_OPENINGS_METRIC, changed(WRENCH_OPENINGS_METRIC, 13, { min: 0.01304 })),
    ).toContain('min <= nominal <= max');
    expect(refusedBy(FLANGE_SCREWS_EN1665, changed(FLANGE_SCREWS_EN1665, 'M10', { size: 0.016 }))).toContain(
      'nominal widths, not least ones',
    );
  });

  it('a least width above the nominal one', () => {
    expect(refusedBy(HEX_LEAST_WIDTHS, changed(HEX_LEAST_WIDTHS, 16, { gradeA: 16.27 }))).toContain(
      'min <= nominal <= max',
    );
  });

  it('cells of the wrong kind, absent, or under no column', () => {
    const row = HEX_HEADS_ISO.rows[0];
    if (row === undefined) throw new Error('no rows');
    const { size, ...without } = row;
    const damaged: Table = {
      ...HEX_HEADS_ISO,
      rows: [
        { ...row, size: '11/16' },
        { ...row, size: Number.NaN },
        without,
        { ...row, size: null },
        { ...row, width: size },
      ],
      checks: [],
    };
    expect(checkTable(damaged).map((fault) => `${fault.check}: ${fault.message}`)).toEqual([
      'citation: no checks of its own',
      'cells: row 1: size is printed in mm, only inches are fractions',
      'cells: row 2: size is not a number: NaN',
      'cells: row 3: size is missing',
      'cells: row 4: size may not be empty',
      'cells: row 5: no column width',
    ]);
  });
});
