import { defineTable } from '../shape/define-table.ts';
import { between, ratio, rising } from '../shape/table-checks.ts';

/** Least lengths of double box wrenches, between centres; metric lists of lengths were not seen. */
export const BOX_WRENCH_LENGTHS = defineTable({
  id: 'box-wrench-lengths',
  title: 'Lengths of inch box wrenches',
  citation: {
    body: 'US General Services Administration',
    document: 'A-A-1346A',
    edition: 'revision A',
    part: 'length between centres',
    obtained: 'original',
  },
  columns: {
    small: { title: 'Smaller end', unit: 'in' },
    large: { title: 'Larger end', unit: 'in' },
    length: { title: 'Between centres', unit: 'in' },
  },
  rows: [
    { small: '7/16', large: '1/2', length: '4-7/8' },
    { small: '9/16', large: '5/8', length: '5-11/16' },
    { small: '5/8', large: '3/4', length: '6-7/16' },
  ],
  checks: [
    rising('small'),
    rising('large'),
    rising('length'),
    ratio('large', 'small', 1.05, 1.25),
    between('length', 3, 20),
  ],
});
