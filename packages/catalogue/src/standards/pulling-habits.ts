import { defineTable } from '../shape/define-table.ts';
import { between, rising } from '../shape/table-checks.ts';

/** What the planner lets a person do on a lever (model M2). */
export const PULLING_HABITS = defineTable({
  id: 'pulling-habits',
  title: 'Force on a lever, as planned',
  citation: {
    body: 'Waymend',
    document: 'model M2',
    edition: '1',
    part: 'lever',
    obtained: 'common-practice',
  },
  columns: {
    effort: { title: 'Effort', unit: 'text' },
    force: { title: 'Force', unit: 'N' },
  },
  rows: [
    { effort: 'easy (the HSE filter value)', force: 200 },
    { effort: 'hard (300 to 400 N are pulled in practice)', force: 350 },
  ],
  checks: [rising('force'), between('force', 100, 500)],
});
