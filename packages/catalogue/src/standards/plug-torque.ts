import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, unique } from '../shape/table-checks.ts';

export const PLUG_TORQUE = defineTable({
  id: 'plug-torque',
  title: 'Spark plug torque',
  citation: {
    body: 'spark plug trade',
    document: 'torque by plug thread and seat',
    edition: 'not stated',
    part: 'torque',
    obtained: 'recalled',
  },
  columns: {
    plug: { title: 'Thread and seat', unit: 'text' },
    low: { title: 'From', unit: 'N m' },
    high: { title: 'To', unit: 'N m' },
  },
  rows: [
    { plug: 'M10', low: 10, high: 15 },
    { plug: 'M12', low: 15, high: 20 },
    { plug: 'M14 gasket', low: 20, high: 30 },
    { plug: 'M14 taper', low: 10, high: 20 },
    { plug: 'M18', low: 30, high: 40 },
  ],
  checks: [
    unique('plug'),
    minNominalMax({ nominal: 'low', max: 'high' }),
    between('low', 5, 60),
    ratio('high', 'low', 1.1, 2.1),
  ],
});
