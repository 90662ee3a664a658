import { defineTable } from '../shape/define-table.ts';
import { oneOf } from '../shape/table-checks.ts';
import { HEX_KEYS, KEY_CHECKS } from './metric-head-checks.ts';

/** Rounded heads; the key is smaller than the cap screw of the same thread takes. */
export const BUTTON_HEADS_ISO7380 = defineTable({
  id: 'button-heads-iso7380',
  title: 'Button head screws, ISO 7380',
  citation: {
    body: 'ISO',
    document: 'ISO 7380-1',
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
    { thread: 'M3', size: 2, agree: 2, of: 2 },
    { thread: 'M4', size: 2.5, agree: 2, of: 2 },
    { thread: 'M5', size: 3, agree: 2, of: 2 },
    { thread: 'M6', size: 4, agree: 2, of: 2 },
    { thread: 'M8', size: 5, agree: 2, of: 2 },
    { thread: 'M10', size: 6, agree: 2, of: 2 },
    { thread: 'M12', size: 8, agree: 2, of: 2 },
    { thread: 'M16', size: 10, agree: 2, of: 2 },
  ],
  checks: [...KEY_CHECKS, oneOf('size', HEX_KEYS)],
});
