import { defineTable } from '../shape/define-table.ts';
import { between, rising, sameQuantity, unique } from '../shape/table-checks.ts';

/** Widths of spark plug hexes. 14 mm and 9/16 in are two sizes; 16 mm and 5/8 in, 20.8 mm and 13/16 in are one each. */
export const SPARK_PLUGS = defineTable({
  id: 'spark-plugs',
  title: 'Spark plug widths',
  citation: {
    body: 'spark plug trade',
    document: 'hex sizes by kind of plug',
    edition: 'not stated',
    part: 'width across flats',
    obtained: 'secondary',
    through: 'a plug maker page and one other list',
  },
  columns: {
    met: { title: 'Where met', unit: 'text' },
    size: { title: 'Across flats, metric marking', unit: 'mm', gaps: true },
    inch: { title: 'Across flats, inch marking', unit: 'in', gaps: true },
  },
  rows: [
    { met: 'newer engines', size: 14, inch: null },
    { met: 'a few engines', size: null, inch: '9/16' },
    { met: 'most engines', size: 16, inch: '5/8' },
    { met: 'rare, small', size: null, inch: '3/4' },
    { met: 'older engines', size: 20.8, inch: '13/16' },
    { met: 'rare, large', size: null, inch: '7/8' },
  ],
  checks: [
    unique('met'),
    rising('size'),
    rising('inch'),
    between('size', 8, 30),
    between('inch', 0.3, 1.2),
    // One plug with two markings: near enough for one socket (model M2); 14 mm and 9/16 in are not.
    sameQuantity('size', 'inch', 0.011),
  ],
});
