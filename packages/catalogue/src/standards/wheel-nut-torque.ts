import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, rising, unique } from '../shape/table-checks.ts';

/** Generic wheel nut torque by stud; the vehicle's own value comes first. Printed in lbf ft. */
export const WHEEL_NUT_TORQUE = defineTable({
  id: 'wheel-nut-torque',
  title: 'Wheel nut torque, generic',
  citation: {
    body: 'wheel fitting trade',
    document: 'generic torque list by stud',
    edition: 'not stated',
    part: 'torque and least turns of engagement',
    obtained: 'secondary',
    through: 'a wheel adapter supplier and two copies of its list',
  },
  columns: {
    stud: { title: 'Stud', unit: 'text' },
    diameter: { title: 'Stud diameter', unit: 'mm' },
    low: { title: 'Torque from', unit: 'lbf ft' },
    high: { title: 'Torque to', unit: 'lbf ft' },
  },
  rows: [
    { stud: '10 mm', diameter: 10, low: 45, high: 55 },
    { stud: '7/16 in', diameter: 11.1125, low: 70, high: 80 },
    { stud: '12 mm', diameter: 12, low: 70, high: 80 },
    { stud: '1/2 in', diameter: 12.7, low: 75, high: 85 },
    { stud: '14 mm', diameter: 14, low: 85, high: 90 },
    { stud: '9/16 in', diameter: 14.2875, low: 135, high: 145 },
  ],
  checks: [
    unique('stud'),
    rising('diameter'),
    rising('high', { orEqual: true }),
    minNominalMax({ nominal: 'low', max: 'high' }),
    between('low', 30, 250),
    between('diameter', 8, 24),
    ratio('high', 'low', 1.01, 1.3),
  ],
});
