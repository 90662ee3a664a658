import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, unique } from '../shape/table-checks.ts';

/** Stress a bolt of each inch grade bears without lasting stretch. Printed in psi. */
export const PROOF_STRENGTH_J429 = defineTable({
  id: 'proof-strength-j429',
  title: 'Inch grades: proof, yield and tensile stress',
  citation: {
    body: 'SAE',
    document: 'SAE J429',
    edition: 'not stated by the copy read',
    part: 'mechanical requirements',
    obtained: 'secondary',
    through: 'a bolt trade site quoting the standard',
  },
  columns: {
    grade: { title: 'Grade', unit: 'text' },
    from: { title: 'Diameters from', unit: 'in' },
    upTo: { title: 'Diameters up to', unit: 'in' },
    proof: { title: 'Proof stress', unit: 'psi' },
    yields: { title: 'Yield stress', unit: 'psi', gaps: true },
    tensile: { title: 'Tensile stress', unit: 'psi', gaps: true },
  },
  rows: [
    { grade: '2', from: '1/4', upTo: '3/4', proof: 55000, yields: 57000, tensile: 74000 },
    { grade: '2', from: '7/8', upTo: '1-1/2', proof: 33000, yields: null, tensile: null },
    { grade: '5', from: '1/4', upTo: '1', proof: 85000, yields: 92000, tensile: 120000 },
    { grade: '5', from: '1-1/8', upTo: '1-1/2', proof: 74000, yields: null, tensile: null },
    { grade: '8', from: '1/4', upTo: '1-1/2', proof: 120000, yields: 130000, tensile: 150000 },
  ],
  checks: [
    unique('grade', 'from'),
    between('proof', 20000, 200000),
    minNominalMax({ min: 'proof', nominal: 'yields', max: 'tensile' }),
    {
      name: 'a higher grade is stronger, a thicker bolt never',
      run: (rows) =>
        rows.flatMap((row, i) => {
          const before = rows[i - 1];
          if (before === undefined) return [];
          const kept = before.grade === row.grade ? row.proof <= before.proof : row.proof > before.proof;
          return kept ? [] : [`grade ${row.grade} from ${row.from}: ${row.proof} psi after ${before.proof}`];
        }),
    },
    between('from', 0.2, 2),
    between('upTo', 0.5, 2),
    ratio('tensile', 'proof', 1.2, 1.5),
  ],
});
