import { defineTable } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { between, recomputed } from '../shape/table-checks.ts';

/** The steps a load placard asks for: what it says for occupants and cargo together, less the occupants. Printed in lb. */
export const LOAD_PLACARD = defineTable({
  id: 'load-placard',
  title: 'Load placard, worked examples',
  citation: {
    body: 'NHTSA (US)',
    document: '49 CFR 575.6 and FMVSS 110',
    edition: 'not stated by the copy read',
    part: 'steps for the load limit',
    obtained: 'secondary',
    through: 'a vehicle manual that restates the text; the second row from memory of the regulation',
  },
  columns: {
    total: { title: 'Occupants and cargo together', unit: 'lb' },
    occupants: { title: 'Occupants', unit: 'lb' },
    cargo: { title: 'Left for cargo', unit: 'lb' },
  },
  rows: [
    { total: 1500, occupants: 750, cargo: 750 },
    { total: 1400, occupants: 750, cargo: 650, status: 'recalled' },
  ],
  checks: [
    between('total', 300, 10000),
    recomputed<Numbers<'total' | 'occupants' | 'cargo'>>('cargo', (row) => row.total - row.occupants, 0),
  ],
});
