import { defineTable } from '../shape/define-table.ts';
import { between, unique } from '../shape/table-checks.ts';

/** How much voltage a circuit may lose, and how near its source a fuse sits. */
export const VOLTAGE_DROP = defineTable({
  id: 'voltage-drop',
  title: 'Voltage drop limits and fuse distance',
  citation: {
    body: 'ABYC, ISO',
    document: 'ABYC E-11 drop limits; ISO 10133 clause 8.1',
    edition: 'not stated by the copies read',
    part: 'as named in each row',
    obtained: 'secondary',
    through: 'a marine electrical maker quoting the limits; a code note quoting the clause',
  },
  columns: {
    rule: { title: 'Rule', unit: 'text' },
    share: { title: 'Greatest drop', unit: '%', gaps: true },
    distance: { title: 'Greatest distance', unit: 'mm', gaps: true },
  },
  rows: [
    { rule: 'critical circuits', share: 3, distance: null },
    { rule: 'other circuits', share: 10, distance: null },
    { rule: 'fuse from its source', share: null, distance: 200 },
  ],
  checks: [unique('rule'), between('share', 1, 15), between('distance', 50, 500)],
});
