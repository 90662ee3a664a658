import { defineTable } from '../shape/define-table.ts';
import { between, ratio, rising, risingAcross, sameQuantity, unique } from '../shape/table-checks.ts';

/** One published chart, dry, 75 % of SAE J1199 proof load; it takes a quarter off for oiled threads. */
export const TORQUE_PUBLISHED = defineTable({
  id: 'torque-published',
  title: 'A published torque chart, metric bolts',
  citation: {
    body: 'a maker of grounds machines',
    document: 'operator manual, general torque chart',
    edition: 'not stated',
    part: 'page 2-7',
    obtained: 'secondary',
    through: 'a public copy of the manual',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    dry88: { title: 'Class 8.8', unit: 'N m', gaps: true },
    dry88Feet: { title: 'Class 8.8, as also printed', unit: 'lbf ft', gaps: true },
    dry109: { title: 'Class 10.9', unit: 'N m' },
  },
  rows: [
    { thread: 'M6', dry88: 10.9, dry88Feet: null, dry109: 15 },
    { thread: 'M8', dry88: 26, dry88Feet: null, dry109: 38 },
    { thread: 'M10', dry88: 52, dry88Feet: null, dry109: 73 },
    { thread: 'M12', dry88: 90, dry88Feet: null, dry109: 126 },
    {
      thread: 'M16',
      dry88: null,
      dry88Feet: 166,
      dry109: 310,
      note: '255 N m printed beside 166 lbf ft: a misprint',
    },
    { thread: 'M20', dry88: 440, dry88Feet: null, dry109: 610 },
  ],
  checks: [
    unique('thread'),
    rising('dry88'),
    rising('dry109'),
    risingAcross('dry88', 'dry109'),
    between('dry109', 1, 2000),
    // What caught the misprint: 255 N m is not 166 lbf ft.
    sameQuantity('dry88', 'dry88Feet', 0.01),
    between('dry88', 1, 2000),
    between('dry88Feet', 1, 1500),
    ratio('dry109', 'dry88', 1.3, 1.5),
  ],
});
