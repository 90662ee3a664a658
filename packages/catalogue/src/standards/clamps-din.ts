import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, rising } from '../shape/table-checks.ts';

/** Worm clamps by their printed range. */
export const CLAMPS_DIN = defineTable({
  id: 'clamps-din',
  title: 'Worm clamps, DIN ranges',
  citation: {
    body: 'DIN',
    document: 'DIN 3017-1',
    edition: 'not seen',
    part: 'clamping ranges',
    obtained: 'recalled',
  },
  columns: {
    from: { title: 'Clamps from', unit: 'mm' },
    to: { title: 'Clamps to', unit: 'mm' },
  },
  rows: [
    { from: 8, to: 12 },
    { from: 10, to: 16 },
    { from: 12, to: 22 },
    { from: 16, to: 27 },
    { from: 20, to: 32 },
    { from: 25, to: 40 },
    { from: 32, to: 50 },
    { from: 40, to: 60 },
    { from: 50, to: 70 },
    { from: 60, to: 80 },
  ],
  checks: [
    rising('from'),
    rising('to'),
    minNominalMax({ nominal: 'from', max: 'to' }),
    between('to', 10, 200),
    {
      name: 'ranges overlap, so that no hose falls between two clamps',
      run: (rows) =>
        rows.flatMap((row, i) => {
          const before = rows[i - 1];
          return before === undefined || row.from <= before.to
            ? []
            : [`nothing clamps ${before.to} to ${row.from} mm`];
        }),
    },
    ratio('to', 'from', 1.3, 1.9),
  ],
});
