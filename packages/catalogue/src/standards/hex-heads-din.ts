import { defineTable } from '../shape/define-table.ts';
import { agreesWith, ratio } from '../shape/table-checks.ts';
import { HEX_HEADS_ISO } from './hex-heads-iso.ts';
import { hexChecks } from './metric-head-checks.ts';

/** Still made and still met: 17, 19, 22 and 32 mm on M10, M12, M14 and M22, elsewhere as ISO. The corners column is 1.13 x
 * (s - h13), recomputed by a test; open data read agrees at M12 (21.10) and M22 (35.72). */
export const HEX_HEADS_DIN = defineTable({
  id: 'hex-heads-din',
  title: 'Hexagon heads and nuts, older DIN',
  citation: {
    body: 'DIN',
    document: 'DIN 931, DIN 933, DIN 934',
    edition: 'not stated by the copies read',
    part: 'width across flats s, nominal',
    obtained: 'secondary',
    through: 'open data compared: FreeCAD fasteners workbench, BOLTS, bd_warehouse, BOSL2',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
    corners: {
      title: 'Least width across corners, 1.13 x the least width',
      unit: 'mm',
      status: 'computed',
      gaps: true,
    },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M3', size: 5.5, corners: 6.01, agree: 5, of: 5 },
    {
      thread: 'M3.5',
      size: 6,
      corners: 6.58,
      agree: 3,
      of: 5,
      note: 'other copies: FreeCAD din933 has 5.5; bd_warehouse din931 has 5.82',
    },
    { thread: 'M4', size: 7, corners: 7.66, agree: 5, of: 5 },
    { thread: 'M5', size: 8, corners: 8.79, agree: 5, of: 5 },
    { thread: 'M6', size: 10, corners: 11.05, agree: 5, of: 5 },
    { thread: 'M7', size: 11, corners: 12.12, agree: 3, of: 3 },
    { thread: 'M8', size: 13, corners: 14.38, agree: 5, of: 5 },
    { thread: 'M10', size: 17, corners: 18.9, agree: 5, of: 5 },
    { thread: 'M12', size: 19, corners: 21.1, agree: 5, of: 5 },
    { thread: 'M14', size: 22, corners: 24.49, agree: 5, of: 5 },
    { thread: 'M16', size: 24, corners: 26.75, agree: 5, of: 5 },
    { thread: 'M18', size: 27, corners: 30.14, agree: 5, of: 5 },
    { thread: 'M20', size: 30, corners: 33.53, agree: 5, of: 5 },
    { thread: 'M22', size: 32, corners: 35.72, agree: 5, of: 5 },
    { thread: 'M24', size: 36, corners: null, agree: 5, of: 5 },
    { thread: 'M27', size: 41, corners: null, agree: 5, of: 5 },
    { thread: 'M30', size: 46, corners: null, agree: 5, of: 5 },
    { thread: 'M33', size: 50, corners: null, agree: 4, of: 4 },
    { thread: 'M36', size: 55, corners: null, agree: 5, of: 5 },
  ],
  checks: [
    ...hexChecks('DIN before 1982'),
    ratio('corners', 'size', 1.08, 1.1547),
    agreesWith(HEX_HEADS_ISO, 'thread', 'size', ['M10', 'M12', 'M14', 'M22']),
  ],
});
