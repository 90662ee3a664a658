import { defineTable } from '../shape/define-table.ts';
import { between, rising, sameQuantity } from '../shape/table-checks.ts';

/** Widths of spark plug hexes. 20.8 mm is a 13/16 in hex: a 21 mm socket is the larger of the pair. */
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
    size: { title: 'Across flats', unit: 'mm' },
    inch: { title: 'As marked in inches', unit: 'in', gaps: true },
    met: { title: 'Where met', unit: 'text' },
  },
  rows: [
    { size: 14, inch: '9/16', met: 'newer engines; the 9/16 in hex is met on a few' },
    { size: 16, inch: '5/8', met: 'most' },
    { size: 19, inch: '3/4', met: 'rare' },
    { size: 20.8, inch: '13/16', met: 'older engines' },
    { size: 22, inch: '7/8', met: 'rare' },
  ],
  checks: [rising('size'), between('size', 8, 30), sameQuantity('size', 'inch', 0.025)],
});
