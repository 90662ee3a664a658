import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, rising } from '../shape/table-checks.ts';

/** Worm clamps by SAE size. Choose by the hose's outside diameter on the spigot; two may be joined into a larger one. */
export const CLAMPS_SAE = defineTable({
  id: 'clamps-sae',
  title: 'Worm clamps, SAE sizes',
  citation: {
    body: 'SAE',
    document: 'SAE J1508',
    edition: 'not seen',
    part: 'clamping range by size',
    obtained: 'recalled',
  },
  columns: {
    size: { title: 'SAE size', unit: 'count' },
    from: { title: 'Clamps from', unit: 'mm' },
    to: { title: 'Clamps to', unit: 'mm' },
  },
  rows: [
    { size: 6, from: 11, to: 20 },
    { size: 8, from: 13, to: 23 },
    { size: 10, from: 14, to: 27 },
    { size: 12, from: 18, to: 32 },
    { size: 16, from: 21, to: 38 },
    { size: 20, from: 21, to: 44 },
    { size: 24, from: 27, to: 51 },
    { size: 28, from: 33, to: 57 },
    { size: 32, from: 40, to: 64 },
    { size: 36, from: 46, to: 70 },
    { size: 40, from: 52, to: 76 },
  ],
  checks: [
    rising('size'),
    rising('from', { orEqual: true }),
    rising('to'),
    minNominalMax({ nominal: 'from', max: 'to' }),
    between('to', 10, 200),
    between('size', 4, 200),
    ratio('to', 'from', 1.4, 2.2),
  ],
});
