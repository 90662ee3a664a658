import { defineTable } from '../shape/define-table.ts';
import { between, oneOf, minNominalMax, ratio, rising } from '../shape/table-checks.ts';

/** Cross recesses by number, and the threads they are cut in. */
export const CROSS_HEADS = defineTable({
  id: 'cross-heads',
  title: 'Cross recess numbers',
  citation: {
    body: 'ISO',
    document: 'ISO 4757',
    edition: 'not seen',
    part: 'recess number by thread',
    obtained: 'recalled',
  },
  columns: {
    number: { title: 'Recess number', unit: 'count' },
    from: { title: 'Threads from', unit: 'mm' },
    to: { title: 'Threads to', unit: 'mm' },
  },
  rows: [
    { number: 0, from: 1.6, to: 2 },
    { number: 1, from: 2, to: 3 },
    { number: 2, from: 3, to: 5 },
    { number: 3, from: 5, to: 6 },
    { number: 4, from: 8, to: 10 },
  ],
  checks: [
    rising('number'),
    rising('from'),
    rising('to'),
    minNominalMax({ nominal: 'from', max: 'to' }),
    between('to', 1, 12),
    oneOf('number', [0, 1, 2, 3, 4]),
    ratio('to', 'from', 1.2, 1.7),
  ],
});
