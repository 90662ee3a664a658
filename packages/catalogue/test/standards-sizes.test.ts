import { describe, expect, it } from 'vitest';
import { printed, si, statusOf } from '../src/shape/define-table.ts';
import { readNumber } from '../src/shape/table-units.ts';
import { FLANGE_NUTS_ISO4161 } from '../src/standards/flange-nuts-iso4161.ts';
import { FLANGE_SCREWS_EN1662 } from '../src/standards/flange-screws-en1662.ts';
import { FLANGE_SCREWS_EN1665 } from '../src/standards/flange-screws-en1665.ts';
import { HEX_HEADS_DIN } from '../src/standards/hex-heads-din.ts';
import { HEX_HEADS_ISO } from '../src/standards/hex-heads-iso.ts';
import { HEX_HEADS_JIS_SMALL } from '../src/standards/hex-heads-jis-small.ts';
import { HEX_LEAST_WIDTHS } from '../src/standards/hex-least-widths.ts';
import { INCH_HEADS } from '../src/standards/inch-heads.ts';
import { freeTurnDeg, INTERCHANGE, interchangeClass, oversizePct } from '../src/standards/interchange.ts';
import { LOBE_CAPS_ISO14579 } from '../src/standards/lobe-caps-iso14579.ts';
import { LOBES } from '../src/standards/lobes.ts';
import { inchOpening, metricOpening } from '../src/standards/lookup.ts';
import { WRENCH_OPENINGS_METRIC } from '../src/standards/wrench-openings-metric.ts';

const width = (rows: readonly { thread: string; size: number }[], thread: string) =>
  rows.find((row) => row.thread === thread)?.size;

describe('widths across flats', () => {
  // A general encyclopaedia's article on widths across flats: what ISO 272:1982 changed.
  it.each([
    ['M10', 17, 16],
    ['M12', 19, 18],
    ['M14', 22, 21],
    ['M22', 32, 34],
  ])('ISO 272:1982 changed %s from %i to %i mm', (thread, before, after) => {
    expect(width(HEX_HEADS_DIN.rows, thread)).toBe(before);
    expect(width(HEX_HEADS_ISO.rows, thread)).toBe(after);
  });

  it('ISO and DIN part nowhere else', () => {
    const differ = HEX_HEADS_ISO.rows.filter((row) => width(HEX_HEADS_DIN.rows, row.thread) !== row.size);
    expect(differ.map((row) => row.thread)).toEqual(['M10', 'M12', 'M14', 'M22']);
  });

  it('M10 alone is met with 13, 14, 15, 16 and 17 mm: tools go by width, never by thread', () => {
    const tables = [
      HEX_HEADS_ISO,
      HEX_HEADS_DIN,
      HEX_HEADS_JIS_SMALL,
      FLANGE_SCREWS_EN1662,
      FLANGE_SCREWS_EN1665,
      FLANGE_NUTS_ISO4161,
    ];
    const met = new Set(tables.map((table) => width(table.rows, 'M10')));
    expect([...met].sort()).toEqual([13, 14, 15, 16, 17]);
  });

  // BOLTS hex data, DIN 933: e = 21.10 for M12 and 35.72 for M22.
  it('corners of DIN 933 follow from 1.13 x the least width', () => {
    const corners = (thread: string) => HEX_HEADS_DIN.rows.find((row) => row.thread === thread)?.corners;
    expect(corners('M12')).toBeCloseTo(21.1, 2);
    expect(corners('M22')).toBeCloseTo(35.72, 2);
    // Tolerance h13 of ISO 286-1, mm, by nominal width: recalled, not re-read.
    const h13 = (s: number) => (s <= 6 ? 0.18 : s <= 10 ? 0.22 : s <= 18 ? 0.27 : s <= 30 ? 0.33 : 0.39);
    const computed = HEX_HEADS_DIN.rows.filter((row) => row.corners !== null);
    expect(computed.length).toBeGreaterThan(10);
    for (const row of computed) expect(row.corners).toBeCloseTo(1.13 * (row.size - h13(row.size)), 2);
  });

  // Tolerances of ISO 286-1 (recalled, not re-read): grade A h13; grade B h14 to 18 mm, h15 above.
  it('least widths are the nominal less a standard tolerance', () => {
    for (const row of HEX_LEAST_WIDTHS.rows) {
      const a = row.nominal <= 10 ? 0.22 : row.nominal <= 18 ? 0.27 : 0.33;
      expect(row.gradeA).toBeCloseTo(row.nominal - a, 6);
      if (row.gradeB !== null) {
        expect(row.gradeB).toBeCloseTo(row.nominal - (row.nominal <= 18 ? 0.43 : 0.84), 6);
      }
    }
  });

  // An engineering calculator site, hex cap screws: 7/16 thread takes 5/8 in; the nut of ASME B18.2.2 takes 11/16 in.
  it('7/16 and 9/16 in threads need two sockets for bolt and nut', () => {
    const two = INCH_HEADS.rows.filter((row) => row.nut !== null && row.nut !== row.head);
    expect(two.map((row) => [row.thread, row.head, row.nut])).toEqual([
      ['7/16', '5/8', '11/16'],
      ['9/16', '13/16', '7/8'],
    ]);
  });

  it('stamped fractions are read by code', () => {
    expect(readNumber('1-1/2')).toBe(1.5);
    expect(readNumber('11/16')).toBe(0.6875);
    expect(readNumber('11/0')).toBeNull();
    expect(readNumber('about 3')).toBeNull();
    const half = INCH_HEADS.rows.find((row) => row.thread === '1/2');
    if (half === undefined) throw new Error('no 1/2 in row');
    expect(printed(half, 'head')).toBe(0.75);
    expect(si(INCH_HEADS, half, 'head')).toBeCloseTo(0.01905, 12);
  });
});

describe('openings', () => {
  // A general encyclopaedia states 1.508 to 1.520 in for W = 1-1/2 in.
  it('the ASME B18.2.2 formula gives the published case', () => {
    const { min, max } = inchOpening(1.5);
    expect(min).toBeGreaterThanOrEqual(1.508);
    expect(min).toBeLessThan(1.509);
    expect(max).toBeCloseTo(1.52, 6);
  });

  it('listed metric openings are recalled and say so; others are not listed', () => {
    expect(metricOpening(13)).toEqual({ min: 13.04, max: 13.24 });
    expect(metricOpening(14)).toBeNull();
    const row = WRENCH_OPENINGS_METRIC.rows[0];
    if (row === undefined) throw new Error('no rows');
    expect(statusOf(WRENCH_OPENINGS_METRIC, row, 'min')).toBe('recalled');
  });

  // Geometry of a sharp hexagon: round it slips at W/w = 2/sqrt 3; the standard's worst 10 mm pair turns 4.5 deg.
  it('free turn of a hexagon in an opening', () => {
    expect(freeTurnDeg(10, 10)).toBeCloseTo(0, 9);
    expect(freeTurnDeg(10.19, 9.78)).toBeCloseTo(4.5, 1);
    expect(freeTurnDeg(2 / Math.sqrt(3), 1)).toBeCloseTo(30, 6);
  });
});

describe('metric and inch interchange', () => {
  it.each(INTERCHANGE.rows.map((row) => [`${row.mm} mm and ${row.inch} in`, row] as const))(
    '[M2] %s, recomputed from the two sizes',
    (_, row) => {
      const [whole, fraction] = row.inch.toString().includes('-')
        ? row.inch.toString().split('-')
        : ['0', row.inch.toString()];
      const [over, under = '1'] = (fraction ?? '').split('/');
      const inchMm = 25.4 * (Number(whole) + Number(over) / Number(under));
      const [large, small] = [Math.max(row.mm, inchMm), Math.min(row.mm, inchMm)];
      const oversize = (100 * (large - small)) / small;
      const turn = 30 - (Math.acos(((Math.sqrt(3) / 2) * large) / small) * 180) / Math.PI;
      const limits = { A: 0.5, B: 1.1, C: 2, D: Number.POSITIVE_INFINITY };
      expect(row.oversize).toBeCloseTo(oversize, 1);
      expect(Math.abs(row.oversize - oversize)).toBeLessThan(0.0051);
      expect(Math.abs(row.turn - turn)).toBeLessThan(0.051);
      expect(row.larger).toBe(large === row.mm ? 'mm' : 'in');
      expect(row.grade).toBe(Object.entries(limits).find(([, limit]) => oversize <= limit)?.[0]);
    },
  );

  // A general encyclopaedia names these three as near enough; 19 mm and 3/4 in is the nearest of the small sizes.
  it('[M2] the pairs named as near enough are usable one way', () => {
    for (const [mm, inch] of [
      [19, 0.75],
      [8, 5 / 16],
      [4, 5 / 32],
    ] as const) {
      expect(['A', 'B']).toContain(interchangeClass(oversizePct(mm, inch)));
    }
    expect(interchangeClass(oversizePct(19, 0.75))).toBe('A');
  });

  it('[M2] 13 mm on 1/2 in and 9/16 in on 14 mm are not to be used', () => {
    expect(interchangeClass(oversizePct(13, 0.5))).toBe('D');
    expect(interchangeClass(oversizePct(14, 9 / 16))).toBe('D');
  });
});

describe('lobes', () => {
  // FreeCAD fasteners workbench against BOSL2: point to point agrees for the 16 sizes both have.
  it('the two copies of ISO 10664 agree on every size they share', () => {
    const shared = LOBES.rows.filter((row) => row.second !== null);
    expect(shared.length).toBe(16);
    for (const row of shared) expect(row.second, row.size).toBe(row.across);
  });

  // A maker's manual quoted in BOSL2: cap screws outside ISO take T45 on M8, as ISO 14579 does.
  it('M8 cap screws take T45 and M5 ones T25', () => {
    const size = (thread: string) => LOBE_CAPS_ISO14579.rows.find((row) => row.thread === thread)?.size;
    expect(size('M8')).toBe('T45');
    expect(size('M5')).toBe('T25');
  });
});
