import { defineTable } from '../shape/define-table.ts';
import { ratio, rising } from '../shape/table-checks.ts';

/** Heavy hex nuts: one socket up from the plain nut; met on hitches and winches. */
export const INCH_HEAVY_HEX = defineTable({
  id: 'inch-heavy-hex',
  title: 'Inch heavy hex nuts',
  citation: {
    body: 'ASME',
    document: 'ASME B18.2.2',
    edition: 'not seen',
    part: 'heavy hex nuts, width across flats',
    obtained: 'recalled',
  },
  columns: {
    thread: { title: 'Thread', unit: 'in' },
    nut: { title: 'Across flats', unit: 'in' },
  },
  rows: [
    { thread: '1/2', nut: '7/8' },
    { thread: '5/8', nut: '1-1/16' },
    { thread: '3/4', nut: '1-1/4' },
  ],
  // Heavy hex is 1.5 d + 1/8 in.
  checks: [rising('thread'), rising('nut'), ratio('nut', 'thread', 1.65, 1.76)],
});
