import { defineTable } from '../shape/define-table.ts';
import { between, unique } from '../shape/table-checks.ts';

/** Single numbers about tyres that the planner uses or prints. */
export const TYRE_RULES = defineTable({
  id: 'tyre-rules',
  title: 'Tyre rules in one number each',
  citation: {
    body: 'NHTSA (US), USTMA, UNHCR',
    document: 'FMVSS 120 S5.1.2 interpretation nht76-1.47; puncture repair rules; Handbook for Emergencies',
    edition: 'not stated by the copies read',
    part: 'as named in each row',
    obtained: 'secondary',
    through: 'the interpretation letter; maker and dealer pages quoting USTMA; a copy of the handbook annex',
  },
  columns: {
    rule: { title: 'Rule', unit: 'text' },
    factor: { title: 'Divide the rating by', unit: 'ratio', gaps: true },
    mm: { title: 'Length', unit: 'mm', gaps: true },
    km: { title: 'Distance', unit: 'km', gaps: true },
  },
  rows: [
    { rule: 'passenger tyre on a truck, van or trailer', factor: 1.1, mm: null, km: null },
    { rule: 'greatest tread puncture for a lasting repair', factor: null, mm: 6, km: null },
    { rule: 'greatest puncture, steel truck tyre (one page)', factor: null, mm: 10, km: null },
    { rule: 'tyre life on rough desert or mountain roads, at most', factor: null, mm: null, km: 10000 },
  ],
  checks: [unique('rule'), between('factor', 1, 1.5), between('mm', 1, 15), between('km', 1000, 100000)],
});
