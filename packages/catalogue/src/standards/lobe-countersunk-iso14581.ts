import { defineTable } from '../shape/define-table.ts';
import { agreesWith } from '../shape/table-checks.ts';
import { LOBE_CAPS_ISO14579 } from './lobe-caps-iso14579.ts';
import { LOBE_CHECKS, lobeRises } from './metric-head-checks.ts';

/** Countersunk heads, read in one copy. */
export const LOBE_COUNTERSUNK_ISO14581 = defineTable({
  id: 'lobe-countersunk-iso14581',
  title: 'Hexalobular countersunk screws, ISO 14581',
  citation: {
    body: 'ISO',
    document: 'ISO 14581',
    edition: 'not stated by the copies read',
    part: 'hexalobular socket number',
    obtained: 'secondary',
    through: 'open data, one copy: bd_warehouse',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Drive size', unit: 'text' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 'T10', agree: 1, of: 1 },
    { thread: 'M3.5', size: 'T15', agree: 1, of: 1 },
    { thread: 'M4', size: 'T20', agree: 1, of: 1 },
    { thread: 'M5', size: 'T25', agree: 1, of: 1 },
    { thread: 'M6', size: 'T30', agree: 1, of: 1 },
    { thread: 'M8', size: 'T45', agree: 1, of: 1 },
    { thread: 'M10', size: 'T50', agree: 1, of: 1 },
  ],
  checks: [...LOBE_CHECKS, lobeRises, agreesWith(LOBE_CAPS_ISO14579, 'thread', 'size')],
});
