import { defineTable } from '../shape/define-table.ts';
import { oneOf } from '../shape/table-checks.ts';
import { HEX_KEYS, KEY_CHECKS } from './metric-head-checks.ts';

/** Cylindrical heads with a hexagon socket. */
export const SOCKET_CAPS_ISO4762 = defineTable({
  id: 'socket-caps-iso4762',
  title: 'Socket head cap screws, ISO 4762',
  citation: {
    body: 'ISO',
    document: 'ISO 4762',
    edition: 'not stated by the copies read',
    part: 'hexagon socket s, nominal',
    obtained: 'secondary',
    through: 'open data compared: FreeCAD fasteners workbench, BOLTS, bd_warehouse',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 2.5, agree: 3, of: 3 },
    { thread: 'M4', size: 3, agree: 3, of: 3 },
    { thread: 'M5', size: 4, agree: 3, of: 3 },
    { thread: 'M6', size: 5, agree: 3, of: 3 },
    { thread: 'M8', size: 6, agree: 3, of: 3 },
    { thread: 'M10', size: 8, agree: 3, of: 3 },
    { thread: 'M12', size: 10, agree: 3, of: 3 },
    { thread: 'M14', size: 12, agree: 3, of: 3 },
    { thread: 'M16', size: 14, agree: 3, of: 3 },
    { thread: 'M18', size: 14, agree: 1, of: 1 },
    { thread: 'M20', size: 17, agree: 3, of: 3 },
    { thread: 'M22', size: 17, agree: 1, of: 1 },
    { thread: 'M24', size: 19, agree: 3, of: 3 },
    { thread: 'M27', size: 19, agree: 1, of: 1 },
    { thread: 'M30', size: 22, agree: 3, of: 3 },
    { thread: 'M33', size: 24, agree: 1, of: 1 },
    { thread: 'M36', size: 27, agree: 3, of: 3 },
  ],
  checks: [...KEY_CHECKS, oneOf('size', HEX_KEYS)],
});
