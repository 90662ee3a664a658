import { defineTable } from '../shape/define-table.ts';
import { between, unique } from '../shape/table-checks.ts';

/** Shares of road club calls by cause. Shares are not rates, and club calls begin at home: batteries lead them. */
export const FAILURE_SHARES = defineTable({
  id: 'failure-shares',
  title: 'Breakdown shares of road clubs',
  citation: {
    body: 'ADAC (Germany), RACQ (Queensland)',
    document: 'published breakdown statistics',
    edition: 'year in each row',
    part: 'share of calls by cause',
    obtained: 'secondary',
    through: 'trade and daily press quoting the clubs',
  },
  columns: {
    dataset: { title: 'Statistic', unit: 'text' },
    cause: { title: 'Cause or outcome', unit: 'text' },
    share: { title: 'Share of calls', unit: '%' },
  },
  rows: [
    { dataset: 'ADAC (DE) 2021', cause: 'starter battery', share: 46.2 },
    { dataset: 'ADAC (DE) 2021', cause: 'engine/engine management', share: 15.5 },
    { dataset: 'ADAC (DE) 2021', cause: 'other (brakes, steering, drive ...)', share: 14.8 },
    { dataset: 'ADAC (DE) 2019', cause: 'starter battery', share: 41.8 },
    { dataset: 'ADAC (DE) 2019', cause: 'engine/engine management', share: 17.4 },
    { dataset: 'ADAC (DE) 2019', cause: 'body, steering, brakes, chassis, drive', share: 15.5 },
    { dataset: 'ADAC (DE) 2019', cause: 'tyres', share: 7, note: 'at least this much' },
    { dataset: 'ADAC (DE) 2023', cause: 'battery', share: 44.1 },
    { dataset: 'ADAC (DE) 2023', cause: 'engine/engine management incl HV', share: 22.8 },
    { dataset: 'ADAC (DE) 2023', cause: 'alternator, starter, on-board network, lighting', share: 10.5 },
    { dataset: 'RACQ May20-May21', cause: 'back on road straight away', share: 93 },
  ],
  checks: [
    unique('dataset', 'cause'),
    between('share', 0.1, 100),
    {
      name: 'shares of one statistic do not pass 100 %',
      run: (rows) =>
        [...new Set(rows.map((row) => row.dataset))].flatMap((dataset) => {
          const sum = rows
            .filter((row) => row.dataset === dataset)
            .reduce((total, row) => total + row.share, 0);
          return sum <= 100 ? [] : [`${dataset}: ${sum} %`];
        }),
    },
  ],
});
