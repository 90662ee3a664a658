import { defineTable } from '../shape/define-table.ts';
import { between, ratio, rising } from '../shape/table-checks.ts';

/** Square drives: width, test torque of the recalled standard, and the limit the planner works to (model M2). */
export const SQUARE_DRIVES = defineTable({
  id: 'square-drives',
  title: 'Square drives: widths, test torques, working limits',
  citation: {
    body: 'ISO',
    document: 'ISO 3315 (also DIN 3122); widths DIN 3121',
    edition: '2018 edition not seen',
    part: 'ISO 3315 table 1',
    obtained: 'recalled',
    through: 'widths read in a copy of the DIN 3121 text; test torques from memory',
  },
  columns: {
    drive: { title: 'Drive as marked', unit: 'in' },
    width: { title: 'Width of the square', unit: 'mm', status: 'verified', gaps: true },
    test: { title: 'Test torque', unit: 'N m', status: 'recalled' },
    limit: { title: 'Working limit', unit: 'N m', status: 'common-practice' },
  },
  rows: [
    { drive: '1/4', width: 6.35, test: 62, limit: 30 },
    { drive: '3/8', width: 9.525, test: 203, limit: 100 },
    { drive: '1/2', width: 12.7, test: 512, limit: 300 },
    { drive: '3/4', width: 19.05, test: 1412, limit: 800 },
    { drive: '1', width: 25.4, test: 2515, limit: 1500 },
  ],
  checks: [
    rising('drive'),
    rising('test'),
    rising('limit'),
    ratio('width', 'drive', 0.999, 1.001),
    // No damage at the test torque; work is planned well below it.
    ratio('limit', 'test', 0.3, 0.7),
    between('limit', 10, 5000),
  ],
});
