import { defineTable } from '../shape/define-table.ts';
import { SMALL_HEX_CHECKS, sourcesAgree } from './metric-head-checks.ts';

/** As EN 1662 except M12, which is 15 mm here and 16 mm there. */
export const FLANGE_SCREWS_ISO15071 = defineTable({
  id: 'flange-screws-iso15071',
  title: 'Small-series flange screws, ISO 15071 and ISO 4162',
  citation: {
    body: 'ISO',
    document: 'ISO 15071, ISO 4162',
    edition: 'not stated by the copies read',
    part: 'width across flats, greatest',
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
    { thread: 'M5', size: 7, agree: 2, of: 2 },
    { thread: 'M6', size: 8, agree: 2, of: 2 },
    { thread: 'M8', size: 10, agree: 2, of: 2 },
    { thread: 'M10', size: 13, agree: 2, of: 2 },
    { thread: 'M12', size: 15, agree: 2, of: 2 },
    { thread: 'M14', size: 18, agree: 2, of: 2 },
    { thread: 'M16', size: 21, agree: 2, of: 2 },
  ],
  checks: [...SMALL_HEX_CHECKS, sourcesAgree],
});
