import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, rising, unique } from '../shape/table-checks.ts';

/** How long a fuse bears more than its rating. One maker's sheet: a shape, not a promise. */
export const FUSE_TIME = defineTable({
  id: 'fuse-time',
  title: 'Fuse opening times',
  citation: {
    body: 'a fuse maker',
    document: 'data sheet of a 40 A blade fuse and of a large blade fuse',
    edition: 'not stated',
    part: 'opening time by share of rating',
    obtained: 'secondary',
    through: 'a public code file that transcribes the sheets',
  },
  columns: {
    case: { title: 'Family and load', unit: 'text' },
    family: { title: 'Family', unit: 'text' },
    load: { title: 'Load', unit: '%' },
    least: { title: 'Least time', unit: 's' },
    most: { title: 'Greatest time', unit: 's', gaps: true },
  },
  rows: [
    { case: 'blade 100 %', family: 'blade', load: 100, least: 360000, most: null },
    { case: 'blade 135 %', family: 'blade', load: 135, least: 0.75, most: 600 },
    { case: 'blade 200 %', family: 'blade', load: 200, least: 0.15, most: 5 },
    { case: 'blade 350 %', family: 'blade', load: 350, least: 0.08, most: 0.5 },
    { case: 'maxi 135 %', family: 'maxi', load: 135, least: 60, most: 1800 },
    { case: 'maxi 200 %', family: 'maxi', load: 200, least: 2, most: 50 },
  ],
  checks: [
    unique('case'),
    rising('load', { within: 'family' }),
    rising('least', { falling: true, within: 'family' }),
    rising('most', { falling: true, within: 'family' }),
    minNominalMax({ nominal: 'least', max: 'most' }),
    between('load', 100, 1000),
    between('least', 0.01, 1e6),
    between('most', 0.1, 1e4),
    ratio('most', 'least', 5, 1000),
  ],
});
