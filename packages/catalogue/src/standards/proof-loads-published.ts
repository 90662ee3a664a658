import { defineTable } from '../shape/define-table.ts';
import { between, ratio, rising, risingAcross } from '../shape/table-checks.ts';

/** Proof loads as published; a test computes them from stress area and proof stress. */
export const PROOF_LOADS_PUBLISHED = defineTable({
  id: 'proof-loads-published',
  title: 'Published proof loads, coarse metric threads',
  citation: {
    body: 'ISO',
    document: 'ISO 898-1',
    edition: 'not stated by the copy read',
    part: 'proof loads, coarse threads',
    obtained: 'secondary',
    through: 'a bearing distributor table of proof loads',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    load88: { title: 'Class 8.8', unit: 'N' },
    load109: { title: 'Class 10.9', unit: 'N' },
    load129: { title: 'Class 12.9', unit: 'N', gaps: true },
  },
  rows: [
    { thread: 'M6', load88: 11600, load109: 16700, load129: 19500 },
    { thread: 'M8', load88: 21200, load109: 30400, load129: 35500 },
    { thread: 'M10', load88: 33700, load109: 48100, load129: 56300 },
    { thread: 'M12', load88: 48900, load109: 70000, load129: 81800 },
    { thread: 'M14', load88: 66700, load109: 95500, load129: 112000 },
    { thread: 'M16', load88: 91000, load109: 130000, load129: null },
  ],
  checks: [
    rising('load88'),
    rising('load109'),
    rising('load129'),
    risingAcross('load88', 'load109', 'load129'),
    ratio('load109', 'load88', 1.42, 1.44),
    ratio('load129', 'load88', 1.66, 1.69),
    between('load88', 1000, 1e6),
  ],
});
