import { defineTable } from '../shape/define-table.ts';
import { between, rising, unique } from '../shape/table-checks.ts';

/** Greatest speed a tyre is rated for. H stands between U and V, not in its place in the alphabet. */
export const TYRE_SPEED_SYMBOLS = defineTable({
  id: 'tyre-speed-symbols',
  title: 'Tyre speed symbols',
  citation: {
    body: 'UNECE',
    document: 'UN Regulations No. 30 and No. 54',
    edition: 'not stated by the copies read',
    part: 'speed category symbols',
    obtained: 'secondary',
    through: 'public code files and a tyre dealer page; A8 to G from memory',
  },
  columns: {
    symbol: { title: 'Symbol', unit: 'text' },
    speed: { title: 'Greatest speed', unit: 'km/h' },
  },
  rows: [
    { symbol: 'A8', speed: 40, status: 'recalled' },
    { symbol: 'B', speed: 50, status: 'recalled' },
    { symbol: 'C', speed: 60, status: 'recalled' },
    { symbol: 'D', speed: 65, status: 'recalled' },
    { symbol: 'E', speed: 70, status: 'recalled' },
    { symbol: 'F', speed: 80, status: 'recalled' },
    { symbol: 'G', speed: 90, status: 'recalled' },
    { symbol: 'J', speed: 100 },
    { symbol: 'K', speed: 110 },
    { symbol: 'L', speed: 120 },
    { symbol: 'M', speed: 130 },
    { symbol: 'N', speed: 140 },
    { symbol: 'P', speed: 150 },
    { symbol: 'Q', speed: 160 },
    { symbol: 'R', speed: 170 },
    { symbol: 'S', speed: 180 },
    { symbol: 'T', speed: 190 },
    { symbol: 'U', speed: 200 },
    { symbol: 'H', speed: 210 },
    { symbol: 'V', speed: 240 },
    { symbol: 'W', speed: 270 },
    { symbol: 'Y', speed: 300 },
  ],
  checks: [unique('symbol'), rising('speed'), between('speed', 5, 300)],
});
