import { defineTable } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { everyRow, recomputed, unique } from '../shape/table-checks.ts';
import { MM_PER_IN, readNumber } from '../shape/table-units.ts';

interface Pair {
  readonly mm: number;
  readonly inch: string | number;
}

/** How much the larger width exceeds the smaller, % of the smaller. */
export function oversizePct(mm: number, inch: number): number {
  const other = inch * MM_PER_IN;
  return (Math.max(mm, other) / Math.min(mm, other) - 1) * 100;
}

/** Degrees a sharp hexagon of width w turns in an opening W before the flats meet: 30 - acos(cos 30 W / w). */
export function freeTurnDeg(opening: number, head: number): number {
  const degree = Math.PI / 180;
  return 30 - Math.acos(Math.min(1, Math.cos(30 * degree) * (opening / head))) / degree;
}

/** Our own limits (model M2), not a standard's. */
export function interchangeClass(oversize: number): 'A' | 'B' | 'C' | 'D' {
  return oversize <= 0.5 ? 'A' : oversize <= 1.1 ? 'B' : oversize <= 2 ? 'C' : 'D';
}

function widths(row: Pair): { readonly large: number; readonly small: number } {
  const inch = (readNumber(row.inch) ?? Number.NaN) * MM_PER_IN;
  return { large: Math.max(row.mm, inch), small: Math.min(row.mm, inch) };
}

/** Near pairs of metric and inch widths: the larger tool may go on the smaller head, never the other way round. */
export const INTERCHANGE = defineTable({
  id: 'interchange',
  title: 'Metric and inch widths that come near',
  citation: {
    body: 'Waymend',
    document: 'computed from the two widths',
    edition: 'model M2',
    part: 'the classes are our own, not a standard: A to 0.5 %, B to 1.1 %, C to 2 %, D not to be used',
    obtained: 'computed',
  },
  columns: {
    mm: { title: 'Metric width', unit: 'mm' },
    inch: { title: 'Inch width', unit: 'in' },
    larger: { title: 'Which is larger', unit: 'text' },
    oversize: { title: 'Larger over smaller', unit: '%' },
    turn: { title: 'Free turn before contact', unit: 'deg' },
    grade: { title: 'Class', unit: 'text' },
  },
  rows: [
    { mm: 4, inch: '5/32', larger: 'mm', oversize: 0.79, turn: 0.8, grade: 'B' },
    { mm: 5.5, inch: '7/32', larger: 'in', oversize: 1.02, turn: 1.0, grade: 'B' },
    { mm: 7, inch: '9/32', larger: 'in', oversize: 2.05, turn: 2.1, grade: 'D' },
    { mm: 8, inch: '5/16', larger: 'mm', oversize: 0.79, turn: 0.8, grade: 'B' },
    { mm: 9, inch: '11/32', larger: 'mm', oversize: 3.08, turn: 3.2, grade: 'D' },
    { mm: 11, inch: '7/16', larger: 'in', oversize: 1.02, turn: 1.0, grade: 'B' },
    { mm: 12, inch: '15/32', larger: 'mm', oversize: 0.79, turn: 0.8, grade: 'B' },
    { mm: 13, inch: '1/2', larger: 'mm', oversize: 2.36, turn: 2.4, grade: 'D' },
    { mm: 14, inch: '9/16', larger: 'in', oversize: 2.05, turn: 2.1, grade: 'D' },
    { mm: 16, inch: '5/8', larger: 'mm', oversize: 0.79, turn: 0.8, grade: 'B' },
    { mm: 17, inch: '11/16', larger: 'in', oversize: 2.72, turn: 2.8, grade: 'D' },
    { mm: 18, inch: '11/16', larger: 'mm', oversize: 3.08, turn: 3.2, grade: 'D' },
    { mm: 19, inch: '3/4', larger: 'in', oversize: 0.26, turn: 0.3, grade: 'A' },
    { mm: 21, inch: '13/16', larger: 'mm', oversize: 1.76, turn: 1.8, grade: 'C' },
    { mm: 22, inch: '7/8', larger: 'in', oversize: 1.02, turn: 1.0, grade: 'B' },
    { mm: 24, inch: '15/16', larger: 'mm', oversize: 0.79, turn: 0.8, grade: 'B' },
    { mm: 25, inch: '1', larger: 'in', oversize: 1.6, turn: 1.6, grade: 'C' },
    { mm: 26, inch: '1', larger: 'mm', oversize: 2.36, turn: 2.4, grade: 'D' },
    { mm: 27, inch: '1-1/16', larger: 'mm', oversize: 0.05, turn: 0.0, grade: 'A' },
    { mm: 28, inch: '1-1/8', larger: 'in', oversize: 2.05, turn: 2.1, grade: 'D' },
    { mm: 29, inch: '1-1/8', larger: 'mm', oversize: 1.49, turn: 1.5, grade: 'C' },
    { mm: 30, inch: '1-3/16', larger: 'in', oversize: 0.54, turn: 0.5, grade: 'B' },
    { mm: 32, inch: '1-1/4', larger: 'mm', oversize: 0.79, turn: 0.8, grade: 'B' },
    { mm: 34, inch: '1-5/16', larger: 'mm', oversize: 1.99, turn: 2.0, grade: 'C' },
    { mm: 34, inch: '1-3/8', larger: 'in', oversize: 2.72, turn: 2.8, grade: 'D' },
    { mm: 36, inch: '1-3/8', larger: 'mm', oversize: 3.08, turn: 3.2, grade: 'D' },
    { mm: 36, inch: '1-7/16', larger: 'in', oversize: 1.42, turn: 1.4, grade: 'C' },
    { mm: 41, inch: '1-5/8', larger: 'in', oversize: 0.67, turn: 0.7, grade: 'B' },
    { mm: 46, inch: '1-13/16', larger: 'in', oversize: 0.08, turn: 0.1, grade: 'A' },
    { mm: 50, inch: '1-15/16', larger: 'mm', oversize: 1.6, turn: 1.6, grade: 'C' },
    { mm: 50, inch: '2', larger: 'in', oversize: 1.6, turn: 1.6, grade: 'C' },
  ],
  checks: [
    unique('mm', 'inch'),
    recomputed<Pair & Numbers<'oversize'>>(
      'oversize',
      (row) => oversizePct(row.mm, readNumber(row.inch) ?? Number.NaN),
      0.0051,
    ),
    recomputed<Pair & Numbers<'turn'>>(
      'turn',
      (row) => freeTurnDeg(widths(row).large, widths(row).small),
      0.051,
    ),
    everyRow<Pair & { readonly larger: string }>('larger is the larger', (row) =>
      (widths(row).large === row.mm ? 'mm' : 'in') === row.larger
        ? null
        : `${row.mm} mm and ${row.inch} in: ${row.larger} is not the larger`,
    ),
    everyRow<Pair & Numbers<'oversize'> & { readonly grade: string }>(
      'the class follows the oversize',
      (row) =>
        interchangeClass(row.oversize) === row.grade ? null : `${row.mm} mm and ${row.inch} in: ${row.grade}`,
    ),
  ],
});
