import { defineTable } from '../shape/define-table.ts';
import { between, rising, unique } from '../shape/table-checks.ts';

/** Colours of large blade fuses; the same colour means another rating than on small ones. */
export const FUSES_MAXI = defineTable({
  id: 'fuses-maxi',
  title: 'Large blade fuse colours',
  citation: {
    body: 'ISO',
    document: 'ISO 8820-3',
    edition: '2015',
    part: 'colour by rating',
    obtained: 'secondary',
    through: 'one list for 20 to 60 A; the others from memory',
  },
  columns: {
    rating: { title: 'Rating', unit: 'A' },
    colour: { title: 'Colour', unit: 'text' },
  },
  rows: [
    { rating: 20, colour: 'yellow' },
    { rating: 25, colour: 'grey', status: 'recalled' },
    { rating: 30, colour: 'green' },
    { rating: 35, colour: 'brown', status: 'recalled' },
    { rating: 40, colour: 'orange/amber' },
    { rating: 50, colour: 'red' },
    { rating: 60, colour: 'blue' },
    { rating: 70, colour: 'brown/tan', status: 'recalled' },
    { rating: 80, colour: 'clear/natural', status: 'recalled' },
    { rating: 100, colour: 'violet', status: 'recalled' },
  ],
  checks: [rising('rating'), between('rating', 15, 120), unique('colour')],
});
