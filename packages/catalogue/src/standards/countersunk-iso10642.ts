import { defineTable } from '../shape/define-table.ts';
import { oneOf } from '../shape/table-checks.ts';
import { HEX_KEYS, KEY_CHECKS } from './metric-head-checks.ts';

/** Countersunk heads with a hexagon socket. */
export const COUNTERSUNK_ISO10642 = defineTable({
  id: 'countersunk-iso10642',
  title: 'Countersunk socket screws, ISO 10642',
  citation: {
    body: 'ISO',
    document: 'ISO 10642',
    edition: 'not stated by the copies read',
    part: 'hexagon socket s, nominal',
    obtained: 'secondary',
    through: 'open data compared: FreeCAD fasteners workbench, BOLTS',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 2, agree: 2, of: 2 },
    { thread: 'M4', size: 2.5, agree: 2, of: 2 },
    { thread: 'M5', size: 3, agree: 2, of: 2 },
    { thread: 'M6', size: 4, agree: 2, of: 2 },
    { thread: 'M8', size: 5, agree: 2, of: 2 },
    { thread: 'M10', size: 6, agree: 2, of: 2 },
    { thread: 'M12', size: 8, agree: 2, of: 2 },
    { thread: 'M14', size: 10, agree: 2, of: 2 },
    { thread: 'M16', size: 10, agree: 2, of: 2 },
    { thread: 'M18', size: 12, agree: 1, of: 1 },
    { thread: 'M20', size: 12, agree: 2, of: 2 },
    { thread: 'M22', size: 14, agree: 1, of: 1 },
    { thread: 'M24', size: 14, agree: 1, of: 1 },
  ],
  checks: [...KEY_CHECKS, oneOf('size', HEX_KEYS)],
});
