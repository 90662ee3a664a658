import { defineTable } from '../shape/define-table.ts';
import { agreesWith, oneOf } from '../shape/table-checks.ts';
import { HEX_KEYS, KEY_CHECKS } from './metric-head-checks.ts';
import { SOCKET_CAPS_ISO4762 } from './socket-caps-iso4762.ts';

/** Low heads with the keys of ISO 4762, read in one copy. */
export const LOW_HEADS_DIN6912 = defineTable({
  id: 'low-heads-din6912',
  title: 'Low socket heads with pilot recess, DIN 6912',
  citation: {
    body: 'DIN',
    document: 'DIN 6912',
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
    { thread: 'M4', size: 3, agree: 1, of: 1 },
    { thread: 'M5', size: 4, agree: 1, of: 1 },
    { thread: 'M6', size: 5, agree: 1, of: 1 },
    { thread: 'M8', size: 6, agree: 1, of: 1 },
    { thread: 'M10', size: 8, agree: 1, of: 1 },
    { thread: 'M12', size: 10, agree: 1, of: 1 },
    { thread: 'M14', size: 12, agree: 1, of: 1 },
    { thread: 'M16', size: 14, agree: 1, of: 1 },
    { thread: 'M18', size: 14, agree: 1, of: 1 },
    { thread: 'M20', size: 17, agree: 1, of: 1 },
    { thread: 'M22', size: 17, agree: 1, of: 1 },
    { thread: 'M24', size: 19, agree: 1, of: 1 },
    { thread: 'M27', size: 19, agree: 1, of: 1 },
    { thread: 'M30', size: 22, agree: 1, of: 1 },
    { thread: 'M33', size: 24, agree: 1, of: 1 },
    { thread: 'M36', size: 27, agree: 1, of: 1 },
  ],
  checks: [...KEY_CHECKS, oneOf('size', HEX_KEYS), agreesWith(SOCKET_CAPS_ISO4762, 'thread', 'size')],
});
