import { defineTable } from '../shape/define-table.ts';
import { between, ratio, unique } from '../shape/table-checks.ts';

/** What a person pulls or pushes. Screening values and one military table: not limits of what is possible. */
export const HAND_FORCES = defineTable({
  id: 'hand-forces',
  title: 'Hand forces',
  citation: {
    body: 'HSE (UK); US Department of Defense, through the FAA',
    document:
      'L23 push and pull filter; MIL-STD-1472D as quoted in the FAA Human Factors Design Standard, exhibit 14.5.2.1',
    edition: 'HSE web page; FAA exhibit',
    part: 'as named in each row',
    obtained: 'secondary',
    through: 'the HSE page itself; a public copy of the FAA exhibit, page 14-45; arm rows from memory',
  },
  columns: {
    action: { title: 'Action', unit: 'text' },
    men: { title: 'Force, men', unit: 'N' },
    women: { title: 'Force, women', unit: 'N', gaps: true },
  },
  rows: [
    {
      action: 'push or pull to start or stop a load, hands knuckle to shoulder (HSE filter)',
      men: 200,
      women: 150,
    },
    { action: 'push or pull to keep a load moving (HSE filter)', men: 100, women: 70 },
    { action: 'hand grip, left, 5th percentile', men: 200, women: null },
    { action: 'hand grip, right, 5th percentile', men: 208, women: null },
    { action: 'thumb and finger, 5th percentile', men: 48, women: null },
    { action: 'pull, right arm, elbow 180 deg, 5th percentile', men: 231, women: null, status: 'recalled' },
    { action: 'pull, right arm, elbow 150 deg, 5th percentile', men: 249, women: null, status: 'recalled' },
    { action: 'pull, right arm, elbow 120 deg, 5th percentile', men: 187, women: null, status: 'recalled' },
    { action: 'pull, right arm, elbow 90 deg, 5th percentile', men: 165, women: null, status: 'recalled' },
    { action: 'pull, right arm, elbow 60 deg, 5th percentile', men: 107, women: null, status: 'recalled' },
    { action: 'push, right arm, elbow 180 deg, 5th percentile', men: 222, women: null, status: 'recalled' },
    { action: 'push, right arm, elbow 150 deg, 5th percentile', men: 187, women: null, status: 'recalled' },
    { action: 'push, right arm, elbow 120 deg, 5th percentile', men: 160, women: null, status: 'recalled' },
    { action: 'push, right arm, elbow 90 deg, 5th percentile', men: 160, women: null, status: 'recalled' },
    { action: 'push, right arm, elbow 60 deg, 5th percentile', men: 151, women: null, status: 'recalled' },
  ],
  checks: [
    unique('action'),
    between('men', 20, 1000),
    // Women 35 to 85 % of men by muscle group (an engineering reference site).
    ratio('women', 'men', 0.35, 0.85),
  ],
});
