import { defineTable } from '../shape/define-table.ts';
import { SMALL_HEX_CHECKS, sourcesAgree } from './metric-head-checks.ts';

/** Flange screws with a head one or two sizes down. */
export const FLANGE_SCREWS_EN1662 = defineTable({
  id: 'flange-screws-en1662',
  title: 'Small-series flange screws, EN 1662',
  citation: {
    body: 'CEN',
    document: 'EN 1662',
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
    { thread: 'M5', size: 7, agree: 2, of: 2 },
    { thread: 'M6', size: 8, agree: 2, of: 2 },
    { thread: 'M8', size: 10, agree: 2, of: 2 },
    { thread: 'M10', size: 13, agree: 2, of: 2 },
    { thread: 'M12', size: 16, agree: 2, of: 2 },
    { thread: 'M14', size: 18, agree: 2, of: 2 },
    { thread: 'M16', size: 21, agree: 2, of: 2 },
  ],
  checks: [...SMALL_HEX_CHECKS, sourcesAgree],
});
