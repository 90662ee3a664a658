import { defineTable } from '../shape/define-table.ts';
import { between, minNominalMax, ratio, unique } from '../shape/table-checks.ts';

/** How long things keep unopened in a cool dry place. Heat shortens every one of these. */
export const SHELF_LIFE = defineTable({
  id: 'shelf-life',
  title: 'Shelf life, unopened',
  citation: {
    body: 'makers and general references',
    document: 'shelf life statements',
    edition: 'not stated',
    part: 'as named in each row',
    obtained: 'secondary',
    through:
      'a threadlocker maker article (8 to 21 degC); a general reference for primary cells; the rest from memory',
  },
  columns: {
    thing: { title: 'Thing', unit: 'text' },
    low: { title: 'From', unit: 'month' },
    high: { title: 'To', unit: 'month' },
  },
  rows: [
    { thing: 'zinc-carbon cells', low: 24, high: 36 },
    { thing: 'alkaline cells', low: 60, high: 60 },
    { thing: 'lithium primary cells', low: 120, high: 120 },
    { thing: 'threadlocker', low: 12, high: 24 },
    { thing: 'two-part epoxy', low: 12, high: 36, status: 'recalled' },
    { thing: 'cyanoacrylate', low: 12, high: 12, status: 'recalled' },
    { thing: 'tyre sealant', low: 48, high: 60, status: 'recalled' },
    { thing: 'vulcanising cement', low: 24, high: 60, status: 'recalled' },
  ],
  checks: [
    unique('thing'),
    minNominalMax({ nominal: 'low', max: 'high' }),
    between('high', 3, 240),
    ratio('high', 'low', 1, 3.1),
  ],
});
