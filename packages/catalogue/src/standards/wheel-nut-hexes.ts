import { defineTable } from '../shape/define-table.ts';
import { between, rising } from '../shape/table-checks.ts';

/** Widths met on wheel nuts. */
export const WHEEL_NUT_HEXES = defineTable({
  id: 'wheel-nut-hexes',
  title: 'Wheel nut widths',
  citation: {
    body: 'wheel fitting trade',
    document: 'common widths of wheel nuts',
    edition: 'not stated',
    part: 'widths across flats',
    obtained: 'secondary',
    through: 'a wheel adapter supplier; 22 mm from memory',
  },
  columns: { size: { title: 'Across flats', unit: 'mm' } },
  rows: [{ size: 17 }, { size: 19 }, { size: 21 }, { size: 22, status: 'recalled' }],
  checks: [rising('size'), between('size', 14, 41)],
});
