import { defineTable } from '../shape/define-table.ts';
import { LOBE_CHECKS, lobeRises } from './metric-head-checks.ts';

/** Read in one copy. Makers outside ISO use other sizes: M5 T27, or T25 on button heads. */
export const LOBE_CAPS_ISO14579 = defineTable({
  id: 'lobe-caps-iso14579',
  title: 'Hexalobular cap screws, ISO 14579',
  citation: {
    body: 'ISO',
    document: 'ISO 14579',
    edition: 'not stated by the copies read',
    part: 'hexalobular socket number',
    obtained: 'secondary',
    through: 'open data, one copy: FreeCAD fasteners workbench',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Drive size', unit: 'text' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 'T10', agree: 1, of: 1 },
    { thread: 'M4', size: 'T20', agree: 1, of: 1 },
    { thread: 'M5', size: 'T25', agree: 1, of: 1 },
    { thread: 'M6', size: 'T30', agree: 1, of: 1 },
    { thread: 'M8', size: 'T45', agree: 1, of: 1 },
    { thread: 'M10', size: 'T50', agree: 1, of: 1 },
    { thread: 'M12', size: 'T55', agree: 1, of: 1 },
    { thread: 'M14', size: 'T60', agree: 1, of: 1 },
    { thread: 'M16', size: 'T70', agree: 1, of: 1 },
    { thread: 'M18', size: 'T80', agree: 1, of: 1 },
    { thread: 'M20', size: 'T90', agree: 1, of: 1 },
  ],
  checks: [...LOBE_CHECKS, lobeRises],
});
