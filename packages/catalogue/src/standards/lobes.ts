import { defineTable } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { between, everyRow, ratio, rising, unique } from '../shape/table-checks.ts';

/**
 * Hexalobular sockets, point to point. Only this width is kept: the two copies differ by about 0.1 mm on the other one,
 * nominal against gauge limit.
 */
export const LOBES = defineTable({
  id: 'lobes',
  title: 'Hexalobular (T) sizes',
  citation: {
    body: 'ISO',
    document: 'ISO 10664',
    edition: 'not stated by the copies read',
    part: 'width A, point to point',
    obtained: 'secondary',
    through: 'BOSL2, and the FreeCAD fasteners workbench where it has the size',
  },
  columns: {
    size: { title: 'Size', unit: 'text' },
    number: { title: 'Number', unit: 'count' },
    across: { title: 'Point to point', unit: 'mm' },
    second: { title: 'Point to point, second copy', unit: 'mm', gaps: true },
  },
  rows: [
    { size: 'T1', number: 1, across: 0.9, second: null },
    { size: 'T2', number: 2, across: 1, second: null },
    { size: 'T3', number: 3, across: 1.2, second: null },
    { size: 'T4', number: 4, across: 1.35, second: null },
    { size: 'T5', number: 5, across: 1.48, second: null },
    { size: 'T6', number: 6, across: 1.75, second: 1.75 },
    { size: 'T7', number: 7, across: 2.08, second: null },
    { size: 'T8', number: 8, across: 2.4, second: 2.4 },
    { size: 'T9', number: 9, across: 2.58, second: null },
    { size: 'T10', number: 10, across: 2.8, second: 2.8 },
    { size: 'T15', number: 15, across: 3.35, second: 3.35 },
    { size: 'T20', number: 20, across: 3.95, second: 3.95 },
    { size: 'T25', number: 25, across: 4.5, second: 4.5 },
    { size: 'T27', number: 27, across: 5.07, second: null },
    { size: 'T30', number: 30, across: 5.6, second: 5.6 },
    { size: 'T40', number: 40, across: 6.75, second: 6.75 },
    { size: 'T45', number: 45, across: 7.93, second: 7.93 },
    { size: 'T50', number: 50, across: 8.95, second: 8.95 },
    { size: 'T55', number: 55, across: 11.35, second: 11.35 },
    { size: 'T60', number: 60, across: 13.45, second: 13.45 },
    { size: 'T70', number: 70, across: 15.7, second: 15.7 },
    { size: 'T80', number: 80, across: 17.75, second: 17.75 },
    { size: 'T90', number: 90, across: 20.2, second: 20.2 },
    { size: 'T100', number: 100, across: 22.4, second: 22.4 },
  ],
  checks: [
    unique('size'),
    rising('number'),
    rising('across'),
    between('across', 0.8, 25),
    ratio('across', 'second', 0.999, 1.001),
    everyRow<Numbers<'number'> & { readonly size: string }>('the number is the one in the name', (row) =>
      row.size === `T${row.number}` ? null : `${row.size} is not T${row.number}`,
    ),
  ],
});
