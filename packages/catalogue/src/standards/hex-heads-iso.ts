import { defineTable } from '../shape/define-table.ts';
import { hexChecks } from './metric-head-checks.ts';

/** Full-size metric hexagon heads since the 1982 change of M10, M12, M14 and M22. */
export const HEX_HEADS_ISO = defineTable({
  id: 'hex-heads-iso',
  title: 'Hexagon bolt and screw heads, ISO',
  citation: {
    body: 'ISO',
    document: 'ISO 4014, ISO 4017',
    edition: 'not stated by the copies read',
    part: 'width across flats s, nominal',
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
    { thread: 'M3', size: 5.5, agree: 5, of: 5 },
    { thread: 'M3.5', size: 6, agree: 3, of: 4, note: 'other copies: FreeCAD iso4017 has 5.5' },
    { thread: 'M4', size: 7, agree: 5, of: 5 },
    { thread: 'M5', size: 8, agree: 5, of: 5 },
    { thread: 'M6', size: 10, agree: 5, of: 5 },
    { thread: 'M7', size: 11, agree: 2, of: 2 },
    { thread: 'M8', size: 13, agree: 6, of: 6 },
    { thread: 'M10', size: 16, agree: 6, of: 6 },
    { thread: 'M12', size: 18, agree: 6, of: 6 },
    {
      thread: 'M14',
      size: 21,
      agree: 3,
      of: 6,
      note: 'other copies: FreeCAD iso4017 has 22; FreeCAD iso4014 has 22; BOLTS hexscrew2 has 22',
    },
    { thread: 'M16', size: 24, agree: 6, of: 6 },
    { thread: 'M18', size: 27, agree: 6, of: 6 },
    { thread: 'M20', size: 30, agree: 6, of: 6 },
    { thread: 'M22', size: 34, agree: 5, of: 6, note: 'other copies: BOLTS hexscrew2 has 32' },
    { thread: 'M24', size: 36, agree: 6, of: 6 },
    { thread: 'M27', size: 41, agree: 6, of: 6 },
    { thread: 'M30', size: 46, agree: 6, of: 6 },
    { thread: 'M33', size: 50, agree: 6, of: 6 },
    { thread: 'M36', size: 55, agree: 6, of: 6 },
  ],
  checks: hexChecks('ISO 272:1982'),
});
