import { defineTable } from '../shape/define-table.ts';
import { SMALL_HEX_CHECKS } from './metric-head-checks.ts';

/** Small heads common on vehicles from East Asia; read in one table only. */
export const HEX_HEADS_JIS_SMALL = defineTable({
  id: 'hex-heads-jis-small',
  title: 'Hexagon heads, small series, JIS',
  citation: {
    body: 'JIS',
    document: 'hexagons, small series (B 1180 and B 1181, numbers recalled)',
    edition: 'not stated by the copy read',
    part: 'width across flats',
    obtained: 'secondary',
    through: 'one engineering reference site comparing ANSI/ISO, DIN and JIS widths',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
  },
  rows: [
    { thread: 'M4', size: 7 },
    { thread: 'M5', size: 8 },
    { thread: 'M6', size: 10 },
    { thread: 'M8', size: 12 },
    { thread: 'M10', size: 14 },
    { thread: 'M12', size: 17 },
    { thread: 'M14', size: 19 },
    { thread: 'M16', size: 22 },
  ],
  checks: SMALL_HEX_CHECKS,
});
