import { defineTable } from '../shape/define-table.ts';
import { between, rising } from '../shape/table-checks.ts';

/** What a 40 A large blade fuse carries when it is hot: plan a lasting load at no more than 0.75 to 0.8 of the rating. */
export const FUSE_DERATING = defineTable({
  id: 'fuse-derating',
  title: 'Fuse derating with heat, 40 A',
  citation: {
    body: 'a fuse maker',
    document: 'data sheet of a large blade fuse',
    edition: 'not stated',
    part: 'derating',
    obtained: 'secondary',
    through: 'a public code file that transcribes the sheet',
  },
  columns: {
    heat: { title: 'Ambient', unit: 'degC' },
    carries: { title: 'Carries', unit: 'A' },
  },
  rows: [
    { heat: 65, carries: 34 },
    { heat: 85, carries: 30 },
  ],
  checks: [
    rising('heat'),
    rising('carries', { falling: true }),
    between('carries', 20, 40),
    between('heat', 20, 150),
  ],
});
