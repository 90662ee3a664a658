import { defineTable } from '../shape/define-table.ts';
import { agreesWith } from '../shape/table-checks.ts';
import { HEX_HEADS_ISO } from './hex-heads-iso.ts';
import { hexChecks } from './metric-head-checks.ts';

/** Full-size metric hexagon nuts; the same widths as the heads. */
export const HEX_NUTS_ISO = defineTable({
  id: 'hex-nuts-iso',
  title: 'Hexagon nuts, ISO',
  citation: {
    body: 'ISO',
    document: 'ISO 4032',
    edition: 'not stated by the copies read',
    part: 'width across flats s, nominal',
    obtained: 'secondary',
    through: 'open data compared: FreeCAD fasteners workbench, BOLTS, bd_warehouse, BOSL2',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 5.5, agree: 5, of: 5 },
    { thread: 'M3.5', size: 6, agree: 4, of: 4 },
    { thread: 'M4', size: 7, agree: 5, of: 5 },
    { thread: 'M5', size: 8, agree: 5, of: 5 },
    { thread: 'M6', size: 10, agree: 5, of: 5 },
    { thread: 'M7', size: 11, agree: 1, of: 1 },
    { thread: 'M8', size: 13, agree: 5, of: 5 },
    { thread: 'M10', size: 16, agree: 5, of: 5 },
    { thread: 'M12', size: 18, agree: 5, of: 5 },
    { thread: 'M14', size: 21, agree: 4, of: 5, note: 'other copies: FreeCAD iso4032 has 22' },
    { thread: 'M16', size: 24, agree: 5, of: 5 },
    { thread: 'M18', size: 27, agree: 4, of: 4 },
    { thread: 'M20', size: 30, agree: 5, of: 5 },
    { thread: 'M22', size: 34, agree: 4, of: 4 },
    { thread: 'M24', size: 36, agree: 5, of: 5 },
    { thread: 'M27', size: 41, agree: 4, of: 4 },
    { thread: 'M30', size: 46, agree: 5, of: 5 },
    { thread: 'M33', size: 50, agree: 4, of: 4 },
    { thread: 'M36', size: 55, agree: 5, of: 5 },
  ],
  checks: [...hexChecks('ISO 272:1982'), agreesWith(HEX_HEADS_ISO, 'thread', 'size')],
});
