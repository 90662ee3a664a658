import { defineTable } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { between, everyRow, rising, sameScale } from '../shape/table-checks.ts';
import { COPPER_OHM_MM2_PER_KM } from './awg.ts';

/** Greatest resistance of metric vehicle cable. */
export const WIRE_METRIC = defineTable({
  id: 'wire-metric',
  title: 'Metric vehicle cable: resistance',
  citation: {
    body: 'ISO',
    document: 'ISO 6722',
    edition: 'not seen',
    part: 'greatest conductor resistance at 20 degC',
    obtained: 'recalled',
  },
  columns: {
    area: { title: 'Nominal area', unit: 'mm2' },
    resistance: { title: 'Greatest resistance at 20 degC', unit: 'ohm/km' },
  },
  rows: [
    { area: 0.5, resistance: 37.1 },
    { area: 0.75, resistance: 24.7 },
    { area: 1, resistance: 18.5 },
    { area: 1.5, resistance: 12.7 },
    { area: 2.5, resistance: 7.6 },
    { area: 4, resistance: 4.71 },
    { area: 6, resistance: 3.14 },
    { area: 10, resistance: 1.82 },
    { area: 16, resistance: 1.16 },
    { area: 25, resistance: 0.743 },
  ],
  checks: [
    rising('area'),
    rising('resistance', { falling: true }),
    sameScale('resistance', 2),
    between('area', 0.1, 200),
    // A greatest value lies a little above pure copper of the nominal area, never below it.
    everyRow<Numbers<'area' | 'resistance'>>('1.03 to 1.15 times solid copper', (row) => {
      const over = (row.area * row.resistance) / COPPER_OHM_MM2_PER_KM;
      return over >= 1.03 && over <= 1.15 ? null : `${row.area} mm2: ${over.toFixed(3)} times copper`;
    }),
  ],
});
