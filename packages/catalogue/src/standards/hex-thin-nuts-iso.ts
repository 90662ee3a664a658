import { defineTable } from '../shape/define-table.ts';
import { agreesWith } from '../shape/table-checks.ts';
import { HEX_NUTS_ISO } from './hex-nuts-iso.ts';
import { hexChecks } from './metric-head-checks.ts';

/** Thin (lock) nuts have the widths of full nuts; only the sizes on which open data disagree were read. */
export const HEX_THIN_NUTS_ISO = defineTable({
  id: 'hex-thin-nuts-iso',
  title: 'Thin hexagon nuts, ISO',
  citation: {
    body: 'ISO',
    document: 'ISO 4035',
    edition: 'not stated by the copies read',
    part: 'width across flats s, nominal',
    obtained: 'secondary',
    through: 'BOLTS nut file; the bd_warehouse file has the DIN widths here and is not followed',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    size: { title: 'Across flats', unit: 'mm' },
    agree: { title: 'Copies that agree', unit: 'count' },
    of: { title: 'Copies compared', unit: 'count' },
  },
  rows: [
    { thread: 'M10', size: 16, agree: 1, of: 2, note: 'other copies: bd_warehouse iso4035 has 17' },
    { thread: 'M12', size: 18, agree: 1, of: 2, note: 'other copies: bd_warehouse iso4035 has 19' },
    { thread: 'M22', size: 34, agree: 1, of: 2, note: 'other copies: bd_warehouse iso4035 has 32' },
  ],
  checks: [...hexChecks('ISO 272:1982'), agreesWith(HEX_NUTS_ISO, 'thread', 'size')],
});
