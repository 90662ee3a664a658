import { defineTable } from '../shape/define-table.ts';
import { between, ratio, rising } from '../shape/table-checks.ts';

/** Screwdriver blades for slotted heads. */
export const SLOT_BLADES = defineTable({
  id: 'slot-blades',
  title: 'Slot blades',
  citation: {
    body: 'ISO',
    document: 'ISO 2380-1',
    edition: 'not seen',
    part: 'blade width and thickness',
    obtained: 'recalled',
  },
  columns: {
    width: { title: 'Blade width', unit: 'mm' },
    thickness: { title: 'Blade thickness', unit: 'mm' },
  },
  rows: [
    { width: 3, thickness: 0.5 },
    { width: 4, thickness: 0.8 },
    { width: 5.5, thickness: 1 },
    { width: 6.5, thickness: 1.2 },
    { width: 8, thickness: 1.2 },
    { width: 10, thickness: 1.6 },
  ],
  checks: [
    rising('width'),
    rising('thickness', { orEqual: true }),
    ratio('width', 'thickness', 4, 8),
    between('width', 2, 16),
  ],
});
