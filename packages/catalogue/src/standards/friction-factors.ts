import { defineTable } from '../shape/define-table.ts';
import { between, rising, unique } from '../shape/table-checks.ts';

/** Nut factor K of T = K d F. Nothing here was re-read: it widens a band, it never decides. */
export const FRICTION_FACTORS = defineTable({
  id: 'friction-factors',
  title: 'Nut factors',
  citation: {
    body: 'NASA',
    document: 'RP-1228 and MSFC-STD-486B hold such tables',
    edition: '1990; not read',
    part: 'torque coefficients',
    obtained: 'recalled',
  },
  columns: {
    state: { title: 'Threads', unit: 'text' },
    factor: { title: 'Nut factor K', unit: 'ratio' },
  },
  rows: [
    { state: 'anti-seize', factor: 0.12 },
    { state: 'oiled', factor: 0.15 },
    { state: 'dry', factor: 0.2 },
    { state: 'rusty (0.3 and over)', factor: 0.3 },
  ],
  checks: [unique('state'), rising('factor'), between('factor', 0.08, 0.5)],
});
