import { defineTable } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { between, everyRow, rising, unique } from '../shape/table-checks.ts';

/** External lobes: only three widths are remembered, none was read. */
export const LOBES_EXTERNAL = defineTable({
  id: 'lobes-external',
  title: 'External hexalobular (E) sizes',
  citation: {
    body: 'not traced',
    document: 'external hexalobular heads',
    edition: 'not known',
    part: 'width, point to point',
    obtained: 'recalled',
  },
  columns: {
    size: { title: 'Size', unit: 'text' },
    number: { title: 'Number', unit: 'count' },
    across: { title: 'Point to point', unit: 'mm', gaps: true },
  },
  rows: [
    { size: 'E8', number: 8, across: null },
    { size: 'E10', number: 10, across: 9.4 },
    { size: 'E12', number: 12, across: 11.2 },
    { size: 'E14', number: 14, across: 12.9 },
    { size: 'E16', number: 16, across: null },
    { size: 'E18', number: 18, across: null },
  ],
  checks: [
    unique('size'),
    rising('number'),
    rising('across'),
    between('across', 7, 20),
    everyRow<Numbers<'number'> & { readonly size: string }>('the number is the one in the name', (row) =>
      row.size === `E${row.number}` ? null : `${row.size} is not E${row.number}`,
    ),
  ],
});
