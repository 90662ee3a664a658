import { defineTable } from '../shape/define-table.ts';
import { SMALL_HEX_CHECKS, sourcesAgree } from './metric-head-checks.ts';

/** Flange screws with full-size heads. */
export const FLANGE_SCREWS_EN1665 = defineTable({
  id: 'flange-screws-en1665',
  title: 'Flange screws, EN 1665',
  citation: {
    body: 'CEN',
    document: 'EN 1665',
    edition: 'not stated by the copies read',
    part: 'width across flats s, nominal',
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
    { thread: 'M5', size: 8, agree: 2, of: 2 },
    { thread: 'M6', size: 10, agree: 2, of: 2 },
    { thread: 'M8', size: 13, agree: 2, of: 2 },
    { thread: 'M10', size: 16, agree: 2, of: 2 },
    { thread: 'M12', size: 18, agree: 2, of: 2 },
    { thread: 'M14', size: 21, agree: 2, of: 2 },
    { thread: 'M16', size: 24, agree: 2, of: 2 },
    { thread: 'M20', size: 30, agree: 2, of: 2 },
  ],
  checks: [...SMALL_HEX_CHECKS, sourcesAgree],
});
