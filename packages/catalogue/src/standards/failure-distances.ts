import { defineTable } from '../shape/define-table.ts';
import { between, unique } from '../shape/table-checks.ts';

/** Miles between failures: heavy trucks on roads, and one army requirement. No number is published for light 4x4 on tracks. */
export const FAILURE_DISTANCES = defineTable({
  id: 'failure-distances',
  title: 'Distance between failures',
  citation: {
    body: 'TMC (US trucking), US Army',
    document: 'roadside repair benchmark; MIL-T-46780D',
    edition: 'period in each row; specification revision D',
    part: 'benchmark averages; paragraph 3.1.1',
    obtained: 'secondary',
    through: 'trade press quoting the benchmark; a public copy of the specification',
  },
  columns: {
    dataset: { title: 'Statistic', unit: 'text' },
    cause: { title: 'What is counted', unit: 'text' },
    distance: { title: 'Distance', unit: 'mile' },
  },
  rows: [
    {
      dataset: 'TMC roadside benchmark (US heavy trucks) Q4 2017',
      cause: 'miles per unscheduled roadside repair, average fleet',
      distance: 11594,
    },
    {
      dataset: 'TMC roadside benchmark (US heavy trucks) Q4 2017',
      cause: 'miles per tyre roadside repair, average',
      distance: 33940,
    },
    {
      dataset: 'TMC roadside benchmark (US heavy trucks) Q4 2017',
      cause: 'miles per lighting roadside repair, average',
      distance: 69010,
    },
    {
      dataset: 'TMC roadside benchmark (US heavy trucks) Q4 2017',
      cause: 'miles per brake roadside repair, average',
      distance: 79858,
    },
    {
      dataset: 'TMC roadside benchmark all verticals Q1 2020',
      cause: 'miles between breakdowns',
      distance: 33637,
    },
    { dataset: 'US Army MIL-T-46780D', cause: 'mean miles between failure, not less than', distance: 2600 },
  ],
  checks: [
    unique('dataset', 'cause'),
    between('distance', 1000, 200000),
    {
      // Any repair comes at least as often as one kind of repair.
      name: 'one kind is rarer than all kinds together',
      run: (rows) => {
        const quarter = rows.filter((row) => row.dataset.includes('Q4 2017'));
        const all = quarter.find((row) => row.cause.includes('per unscheduled'))?.distance ?? 0;
        return quarter.flatMap((row) =>
          row.distance >= all ? [] : [`${row.cause}: ${row.distance} < ${all}`],
        );
      },
    },
  ],
});
