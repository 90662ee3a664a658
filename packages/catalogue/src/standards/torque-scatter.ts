import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, rising, unique } from '../shape/table-checks.ts';

/** How far published charts lie apart for one bolt: why torque is planned as a band. */
export const TORQUE_SCATTER = defineTable({
  id: 'torque-scatter',
  title: 'Spread of published torque charts',
  citation: {
    body: 'makers of farm and turf machines, and of engines',
    document: 'general torque charts',
    edition: 'not stated',
    part: 'lowest and highest chart value',
    obtained: 'secondary',
    through: 'public copies of the charts',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    grade: { title: 'Property class', unit: 'text' },
    low: { title: 'Lowest chart', unit: 'N m' },
    high: { title: 'Highest chart', unit: 'N m' },
    engine: { title: 'One engine maker, class not stated', unit: 'N m', gaps: true },
  },
  rows: [
    { thread: 'M10', grade: '8.8', low: 43, high: 56, engine: 36 },
    { thread: 'M10', grade: '10.9', low: 61, high: 80, engine: null },
    { thread: 'M12', grade: '8.8', low: 75, high: 97, engine: 43 },
    { thread: 'M12', grade: '10.9', low: 107, high: 138, engine: null },
  ],
  checks: [
    unique('thread', 'grade'),
    rising('low'),
    rising('high'),
    minNominalMax({ min: 'engine', nominal: 'low', max: 'high' }),
    between('high', 1, 2000),
    ratio('engine', 'low', 0.4, 1),
    ratio('high', 'low', 1.1, 1.5),
  ],
});
