import { defineTable } from '../shape/define-table.ts';
import { between, everyRow, rising, sameScale, unique } from '../shape/table-checks.ts';
import { AWG } from './awg.ts';

/** Cable marked to SAE is 6 to 12 % thinner than the gauge of the same name: more drop, same printed number. */
export const AWG_SAE = defineTable({
  id: 'awg-sae',
  title: 'Wire gauges: least area of SAE-marked cable',
  citation: {
    body: 'SAE',
    document: 'SAE cable (J1127 and J1128, numbers recalled)',
    edition: 'not stated by the copy read',
    part: 'least conductor area by gauge',
    obtained: 'secondary',
    through: 'a marine cable maker catalogue of 2023, page 70',
  },
  columns: {
    awg: { title: 'Gauge', unit: 'text' },
    area: { title: 'Least area', unit: 'mm2' },
  },
  rows: [
    { awg: '18', area: 0.78 },
    { awg: '16', area: 1.18 },
    { awg: '14', area: 1.88 },
    { awg: '12', area: 2.96 },
    { awg: '10', area: 4.73 },
    { awg: '8', area: 7.5 },
    { awg: '6', area: 12.43 },
    { awg: '4', area: 18.93 },
    { awg: '2', area: 31.64 },
    { awg: '1', area: 39.42 },
    { awg: '0', area: 50.15 },
    { awg: '00', area: 63.39 },
    { awg: '000', area: 80.36 },
    { awg: '0000', area: 104.13 },
  ],
  checks: [
    unique('awg'),
    rising('area'),
    sameScale('area', 1.8),
    between('area', 0.3, 120),
    everyRow<{ readonly awg: string; readonly area: number }>(
      '85 to 100 % of the gauge of that name',
      (row) => {
        const full = AWG.rows.find((gauge) => gauge.awg === row.awg)?.area ?? Number.NaN;
        const share = row.area / full;
        return share >= 0.85 && share <= 1 ? null : `${row.awg}: ${row.area} mm2 of ${full} mm2`;
      },
    ),
  ],
});
