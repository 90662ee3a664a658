import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, rising } from '../shape/table-checks.ts';

/** How small a real hexagon of each nominal width may be, by product grade. */
export const HEX_LEAST_WIDTHS = defineTable({
  id: 'hex-least-widths',
  title: 'Least widths of real hexagons',
  citation: {
    body: 'ISO',
    document: 'ISO 8765, ISO 4161, ISO 7040, ISO 15071',
    edition: 'not stated by the copies read',
    part: 'width across flats s, least',
    obtained: 'secondary',
    through: 'open data that agree: FreeCAD fasteners workbench and bd_warehouse',
  },
  columns: {
    nominal: { title: 'Nominal width', unit: 'mm' },
    gradeA: { title: 'Least width, grade A', unit: 'mm' },
    gradeB: { title: 'Least width, grade B', unit: 'mm', gaps: true },
  },
  rows: [
    { nominal: 8, gradeA: 7.78, gradeB: null },
    { nominal: 10, gradeA: 9.78, gradeB: null },
    { nominal: 13, gradeA: 12.73, gradeB: 12.57 },
    { nominal: 15, gradeA: 14.73, gradeB: null },
    { nominal: 16, gradeA: 15.73, gradeB: 15.57 },
    { nominal: 18, gradeA: 17.73, gradeB: 17.57 },
    { nominal: 21, gradeA: 20.67, gradeB: 20.16 },
    { nominal: 24, gradeA: 23.67, gradeB: 23.16 },
    { nominal: 27, gradeA: 26.67, gradeB: 26.16 },
    { nominal: 30, gradeA: 29.67, gradeB: 29.16 },
  ],
  checks: [
    rising('nominal'),
    rising('gradeA'),
    rising('gradeB'),
    minNominalMax({ min: 'gradeB', nominal: 'gradeA', max: 'nominal' }),
    ratio('gradeA', 'nominal', 0.97, 0.995),
    ratio('gradeB', 'nominal', 0.955, 0.99),
    between('nominal', 3, 100),
  ],
});
