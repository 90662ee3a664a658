import { defineTable } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { between, everyRow, rising, unique } from '../shape/table-checks.ts';

/** Stress a bolt of each property class bears without lasting stretch. */
export const PROOF_STRENGTH_ISO898 = defineTable({
  id: 'proof-strength-iso898',
  title: 'Metric property classes: proof stress',
  citation: {
    body: 'ISO',
    document: 'ISO 898-1',
    edition: 'not stated by the copy read',
    part: 'stress under proof load',
    obtained: 'secondary',
    through: 'proof loads in a bearing distributor table, which the stresses reproduce within 0.7 %',
  },
  columns: {
    grade: { title: 'Property class', unit: 'text' },
    above: { title: 'Diameters above', unit: 'mm' },
    upTo: { title: 'Diameters up to', unit: 'mm' },
    proof: { title: 'Proof stress', unit: 'MPa' },
  },
  rows: [
    { grade: '8.8', above: 0, upTo: 16, proof: 580 },
    { grade: '8.8', above: 16, upTo: 39, proof: 600 },
    { grade: '10.9', above: 0, upTo: 39, proof: 830 },
    { grade: '12.9', above: 0, upTo: 39, proof: 970 },
  ],
  checks: [
    unique('grade', 'above'),
    rising('proof'),
    between('proof', 100, 1500),
    // The class names its own tensile strength (x 100) and yield ratio; proof lies a little below yield.
    everyRow<Numbers<'proof'> & { readonly grade: string }>(
      '0.85 to 0.99 of the yield the class names',
      (row) => {
        const [strength = Number.NaN, tenths = Number.NaN] = row.grade.split('.').map(Number);
        const share = row.proof / (strength * 100 * (tenths / 10));
        return share >= 0.85 && share <= 0.99
          ? null
          : `${row.grade}: ${row.proof} MPa is ${share.toFixed(3)} of yield`;
      },
    ),
    {
      name: 'a class goes on where its row before ended',
      run: (rows) =>
        rows.flatMap((row, i) => {
          const before = rows[i - 1];
          const start = before?.grade === row.grade ? before.upTo : 0;
          return row.above === start ? [] : [`${row.grade}: from ${row.above} mm after ${start} mm`];
        }),
    },
    between('upTo', 12, 72),
  ],
});
