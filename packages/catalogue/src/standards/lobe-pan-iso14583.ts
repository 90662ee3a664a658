import { defineTable } from '../shape/define-table.ts';
import { agreesWith } from '../shape/table-checks.ts';
import { LOBE_CAPS_ISO14579 } from './lobe-caps-iso14579.ts';
import { LOBE_CHECKS, lobeRises } from './metric-head-checks.ts';

/** Pan heads: trim and covers. */
export const LOBE_PAN_ISO14583 = defineTable({
  id: 'lobe-pan-iso14583',
  title: 'Hexalobular pan head screws, ISO 14583',
  citation: {
    body: 'ISO',
    document: 'ISO 14583',
    edition: 'not stated by the copies read',
    part: 'hexalobular socket number',
    obtained: 'secondary',
    through: 'open data compared: FreeCAD fasteners workbench, bd_warehouse',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Drive size', unit: 'text' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 'T10', agree: 2, of: 2 },
    { thread: 'M3.5', size: 'T15', agree: 2, of: 2 },
    { thread: 'M4', size: 'T20', agree: 2, of: 2 },
    { thread: 'M5', size: 'T25', agree: 2, of: 2 },
    { thread: 'M6', size: 'T30', agree: 2, of: 2 },
    { thread: 'M8', size: 'T45', agree: 2, of: 2 },
    { thread: 'M10', size: 'T50', agree: 2, of: 2 },
  ],
  checks: [...LOBE_CHECKS, lobeRises, agreesWith(LOBE_CAPS_ISO14579, 'thread', 'size')],
});
