import { defineTable } from '../shape/define-table.ts';
import { between, rising } from '../shape/table-checks.ts';

/** A torque wrench is to be believed in the upper four fifths of its scale. */
export const TORQUE_WRENCH_RANGE = defineTable({
  id: 'torque-wrench-range',
  title: 'Working range of a torque wrench',
  citation: {
    body: 'ISO',
    document: 'ISO 6789',
    edition: 'not stated by the page read',
    part: 'measuring range as share of the greatest torque',
    obtained: 'secondary',
    through: 'a test laboratory page; its accuracy figures conflict with other sources and are left out',
  },
  columns: {
    limit: { title: 'Limit', unit: 'text' },
    share: { title: 'Share of the greatest torque', unit: '%' },
  },
  rows: [
    { limit: 'from', share: 20 },
    { limit: 'to', share: 100 },
  ],
  checks: [rising('share'), between('share', 1, 100)],
});
