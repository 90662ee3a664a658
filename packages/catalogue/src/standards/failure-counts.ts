import { defineTable } from '../shape/define-table.ts';
import { between, unique } from '../shape/table-checks.ts';

/**
 * Counts of breakdowns by cause. The motorway agency's are moving breakdowns with a known cause (36,065 of 90,852 in
 * Nov 23-Feb 24). Complaint files count defects, not wear: they say nothing about what strands a driver.
 */
export const FAILURE_COUNTS = defineTable({
  id: 'failure-counts',
  title: 'Breakdown counts',
  citation: {
    body: 'National Highways (England), RACQ (Queensland), NHTSA (US)',
    document: 'published counts and complaint files',
    edition: 'period in each row',
    part: 'events by cause',
    obtained: 'secondary',
    through: 'press releases and press quoting them; a public analysis of NHTSA complaints',
  },
  columns: {
    dataset: { title: 'Statistic', unit: 'text' },
    cause: { title: 'Cause', unit: 'text' },
    events: { title: 'Events', unit: 'count' },
  },
  rows: [
    { dataset: 'RACQ (Queensland) FY24', cause: 'battery', events: 271650 },
    { dataset: 'RACQ (Queensland) FY24', cause: 'flat tyre', events: 71200 },
    { dataset: 'RACQ (Queensland) FY24', cause: 'lockout', events: 25500 },
    { dataset: 'RACQ (Queensland) FY24', cause: 'out of fuel', events: 7700 },
    { dataset: 'RACQ May20-May21', cause: 'battery', events: 360000, note: 'at least this much' },
    { dataset: 'RACQ May20-May21', cause: 'tyre or wheel', events: 64000 },
    { dataset: 'RACQ May20-May21', cause: 'lockout', events: 37000, note: 'at least this much' },
    { dataset: 'National Highways (England) Nov23-Feb24', cause: 'tyre', events: 16943 },
    { dataset: 'National Highways (England) Nov23-Feb24', cause: 'loss of power', events: 6572 },
    { dataset: 'National Highways (England) Nov23-Feb24', cause: 'engine', events: 2918 },
    { dataset: 'National Highways (England) Nov23-Feb24', cause: 'out of fuel', events: 2263 },
    { dataset: 'National Highways (England) Nov23-Feb24', cause: 'clutch/gears', events: 1985 },
    { dataset: 'National Highways (England) Feb-Mar 2023', cause: 'tyre', events: 7762 },
    { dataset: 'National Highways (England) Feb-Mar 2023', cause: 'loss of power', events: 3052 },
    { dataset: 'National Highways (England) Feb-Mar 2023', cause: 'out of fuel', events: 1001 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'engine/cooling', events: 1600 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'power train', events: 1162 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'electrical system', events: 1068 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'service brakes', events: 441 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'fuel/propulsion', events: 407 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'steering', events: 396 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'suspension', events: 138 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'tires', events: 60 },
    { dataset: 'NHTSA complaints, one analysis', cause: 'wheels', events: 41 },
  ],
  checks: [
    unique('dataset', 'cause'),
    between('events', 1, 1e6),
    {
      name: 'whole events',
      run: (rows) =>
        rows.flatMap((row) => (Number.isInteger(row.events) ? [] : [`${row.dataset}: ${row.events}`])),
    },
  ],
});
