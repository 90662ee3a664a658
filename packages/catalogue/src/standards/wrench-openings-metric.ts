import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, rising } from '../shape/table-checks.ts';

/** Least and greatest opening of a wrench or socket of each nominal size. */
export const WRENCH_OPENINGS_METRIC = defineTable({
  id: 'wrench-openings-metric',
  title: 'Openings of metric wrenches and sockets',
  citation: {
    body: 'ISO',
    document: 'ISO 691 (also DIN 475-2)',
    edition: '1983 is the edition other standards refer to',
    part: 'openings by nominal size',
    obtained: 'recalled',
  },
  columns: {
    nominal: { title: 'Nominal size', unit: 'mm' },
    min: { title: 'Least opening', unit: 'mm' },
    max: { title: 'Greatest opening', unit: 'mm' },
  },
  rows: [
    { nominal: 8, min: 8.03, max: 8.15 },
    { nominal: 10, min: 10.04, max: 10.19 },
    { nominal: 13, min: 13.04, max: 13.24 },
    { nominal: 16, min: 16.05, max: 16.27 },
    { nominal: 17, min: 17.05, max: 17.3 },
    { nominal: 19, min: 19.06, max: 19.36 },
    { nominal: 22, min: 22.06, max: 22.36 },
    { nominal: 24, min: 24.06, max: 24.36 },
    { nominal: 27, min: 27.08, max: 27.48 },
    { nominal: 30, min: 30.08, max: 30.48 },
  ],
  checks: [
    rising('nominal'),
    rising('min'),
    rising('max'),
    minNominalMax({ nominal: 'min', min: 'nominal', max: 'max' }),
    between('nominal', 3, 100),
    {
      name: 'openings exceed the nominal by 0.2 to 2 %',
      run: (rows) =>
        rows.flatMap((row) =>
          row.min / row.nominal > 1.002 && row.max / row.nominal < 1.02
            ? []
            : [`${row.nominal}: ${row.min} to ${row.max}`],
        ),
    },
  ],
});
