import { defineTable } from '../shape/define-table.ts';
import { between, rising, unique } from '../shape/table-checks.ts';

/**
 * Constants of the opening formula: limit = factor x W + plus. Recalled, and confirmed at one point: a general
 * encyclopaedia's article on widths across flats gives 1.508 to 1.520 in for W = 1-1/2 in.
 */
export const WRENCH_OPENINGS_INCH = defineTable({
  id: 'wrench-openings-inch',
  title: 'Openings of inch wrenches and sockets, by formula',
  citation: {
    body: 'ASME',
    document: 'ASME B18.2.2',
    edition: 'not stated',
    part: 'appendix on wrench openings',
    obtained: 'recalled',
  },
  columns: {
    limit: { title: 'Limit', unit: 'text' },
    factor: { title: 'Factor on the nominal width', unit: 'ratio' },
    plus: { title: 'Added', unit: 'in' },
  },
  rows: [
    { limit: 'min', factor: 1.005, plus: 0.001 },
    { limit: 'max', factor: 1.01, plus: 0.005, note: 'min + 0.005 W + 0.004 in' },
  ],
  checks: [
    unique('limit'),
    rising('factor'),
    rising('plus'),
    between('factor', 1, 1.02),
    between('plus', 0.0005, 0.01),
  ],
});
