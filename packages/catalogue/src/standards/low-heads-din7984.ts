import { defineTable } from '../shape/define-table.ts';
import { oneOf } from '../shape/table-checks.ts';
import { HEX_KEYS, KEY_CHECKS } from './metric-head-checks.ts';

/** Low heads, read in one copy; M10 takes 7 mm where others take 6 or 8. */
export const LOW_HEADS_DIN7984 = defineTable({
  id: 'low-heads-din7984',
  title: 'Low socket heads, DIN 7984',
  citation: {
    body: 'DIN',
    document: 'DIN 7984',
    edition: 'not stated by the copies read',
    part: 'hexagon socket s, nominal',
    obtained: 'secondary',
    through: 'open data, one copy: FreeCAD fasteners workbench',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 2, agree: 1, of: 1 },
    { thread: 'M4', size: 2.5, agree: 1, of: 1 },
    { thread: 'M5', size: 3, agree: 1, of: 1 },
    { thread: 'M6', size: 4, agree: 1, of: 1 },
    { thread: 'M8', size: 5, agree: 1, of: 1 },
    { thread: 'M10', size: 7, agree: 1, of: 1 },
    { thread: 'M12', size: 8, agree: 1, of: 1 },
    { thread: 'M14', size: 10, agree: 1, of: 1 },
    { thread: 'M16', size: 12, agree: 1, of: 1 },
    { thread: 'M18', size: 12, agree: 1, of: 1 },
    { thread: 'M20', size: 14, agree: 1, of: 1 },
    { thread: 'M22', size: 14, agree: 1, of: 1 },
    { thread: 'M24', size: 17, agree: 1, of: 1 },
  ],
  checks: [...KEY_CHECKS, oneOf('size', HEX_KEYS)],
});
