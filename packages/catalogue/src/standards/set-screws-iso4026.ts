import { defineTable } from '../shape/define-table.ts';
import { oneOf } from '../shape/table-checks.ts';
import { HEX_KEYS, KEY_CHECKS } from './metric-head-checks.ts';

/** Headless screws; the smallest key of each thread. */
export const SET_SCREWS_ISO4026 = defineTable({
  id: 'set-screws-iso4026',
  title: 'Socket set screws, ISO 4026',
  citation: {
    body: 'ISO',
    document: 'ISO 4026',
    edition: 'not stated by the copies read',
    part: 'hexagon socket s, nominal',
    obtained: 'secondary',
    through: 'open data compared: FreeCAD fasteners workbench, bd_warehouse',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 1.5, agree: 2, of: 2 },
    { thread: 'M4', size: 2, agree: 2, of: 2 },
    { thread: 'M5', size: 2.5, agree: 2, of: 2 },
    { thread: 'M6', size: 3, agree: 2, of: 2 },
    { thread: 'M8', size: 4, agree: 2, of: 2 },
    { thread: 'M10', size: 5, agree: 2, of: 2 },
    { thread: 'M12', size: 6, agree: 2, of: 2 },
    { thread: 'M14', size: 6, agree: 1, of: 1 },
    { thread: 'M16', size: 8, agree: 2, of: 2 },
    { thread: 'M18', size: 10, agree: 1, of: 1 },
    { thread: 'M20', size: 10, agree: 2, of: 2 },
    { thread: 'M22', size: 12, agree: 1, of: 1 },
    { thread: 'M24', size: 12, agree: 1, of: 1 },
  ],
  checks: [...KEY_CHECKS, oneOf('size', HEX_KEYS)],
});
