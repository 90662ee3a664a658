import { defineTable } from '../shape/define-table.ts';
import { between, rising } from '../shape/table-checks.ts';

/** Multiplies the ampacity where the wire runs through an engine space at 50 degC. */
export const AMPACITY_HEAT = defineTable({
  id: 'ampacity-heat',
  title: 'Ampacity in an engine space at 50 degC',
  citation: {
    body: 'US Code of Federal Regulations',
    document: '33 CFR 183.425',
    edition: 'as in force when read',
    part: 'correction factors to Table 5',
    obtained: 'secondary',
    through: 'two public copies for 105 degC; the others from memory',
  },
  columns: {
    insulation: { title: 'Insulation rating', unit: 'degC' },
    factor: { title: 'Factor', unit: 'ratio' },
  },
  rows: [
    { insulation: 60, factor: 0.58, status: 'recalled' },
    { insulation: 75, factor: 0.75, status: 'recalled' },
    { insulation: 80, factor: 0.78, status: 'recalled' },
    { insulation: 90, factor: 0.82, status: 'recalled' },
    { insulation: 105, factor: 0.85 },
    { insulation: 125, factor: 0.89, status: 'recalled' },
    { insulation: 200, factor: 1, status: 'recalled' },
  ],
  checks: [rising('insulation'), rising('factor'), between('factor', 0.5, 1), between('insulation', 50, 250)],
});
