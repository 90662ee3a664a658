import { defineTable } from '../shape/define-table.ts';
import { agreesWith } from '../shape/table-checks.ts';
import { FLANGE_SCREWS_EN1665 } from './flange-screws-en1665.ts';
import { SMALL_HEX_CHECKS, sourcesAgree } from './metric-head-checks.ts';

/** M10 is 15 mm on the nut and 16 mm on the screw that goes with it. */
export const FLANGE_NUTS_ISO4161 = defineTable({
  id: 'flange-nuts-iso4161',
  title: 'Flange nuts, ISO 4161',
  citation: {
    body: 'ISO',
    document: 'ISO 4161',
    edition: 'not stated by the copies read',
    part: 'width across flats, greatest',
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
    { thread: 'M10', size: 15, agree: 2, of: 2 },
    { thread: 'M12', size: 18, agree: 2, of: 2 },
    { thread: 'M14', size: 21, agree: 2, of: 2 },
    { thread: 'M16', size: 24, agree: 2, of: 2 },
    { thread: 'M20', size: 30, agree: 2, of: 2 },
  ],
  checks: [...SMALL_HEX_CHECKS, sourcesAgree, agreesWith(FLANGE_SCREWS_EN1665, 'thread', 'size', ['M10'])],
});
