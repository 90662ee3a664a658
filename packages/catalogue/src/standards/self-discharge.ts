import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, unique } from '../shape/table-checks.ts';

/** Charge a cell loses in a month on the shelf near 20 degC; about twice as much 10 degC warmer (recalled). */
export const SELF_DISCHARGE = defineTable({
  id: 'self-discharge',
  title: 'Self-discharge of rechargeable cells',
  citation: {
    body: 'general references',
    document: 'two engineering encyclopaedias and a copy of a third',
    edition: 'not stated',
    part: 'self-discharge a month',
    obtained: 'secondary',
    through: 'the pages named, probably one origin',
  },
  columns: {
    kind: { title: 'Chemistry', unit: 'text' },
    low: { title: 'From, a month', unit: '%' },
    high: { title: 'To, a month', unit: '%' },
  },
  rows: [
    { kind: 'lithium-ion', low: 2, high: 3 },
    { kind: 'lead-acid', low: 4, high: 6 },
    { kind: 'nickel-cadmium', low: 15, high: 20 },
    { kind: 'nickel-metal hydride', low: 30, high: 30 },
    { kind: 'nickel-metal hydride, low self-discharge', low: 2, high: 3 },
  ],
  checks: [
    unique('kind'),
    minNominalMax({ nominal: 'low', max: 'high' }),
    between('high', 0.1, 40),
    ratio('high', 'low', 1, 1.6),
  ],
});
