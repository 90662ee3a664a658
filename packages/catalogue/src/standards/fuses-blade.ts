import { defineTable } from '../shape/define-table.ts';
import { between, rising, unique } from '../shape/table-checks.ts';

/** Colours of blade, small and low-profile fuses. */
export const FUSES_BLADE = defineTable({
  id: 'fuses-blade',
  title: 'Blade fuse colours',
  citation: {
    body: 'ISO',
    document: 'ISO 8820-3 (also SAE J1284, DIN 72581)',
    edition: '2015',
    part: 'colour by rating',
    obtained: 'secondary',
    through: 'three independent lists that agree',
  },
  columns: {
    rating: { title: 'Rating', unit: 'A' },
    colour: { title: 'Colour', unit: 'text' },
  },
  rows: [
    { rating: 1, colour: 'black' },
    { rating: 2, colour: 'grey' },
    { rating: 3, colour: 'violet' },
    { rating: 4, colour: 'pink' },
    { rating: 5, colour: 'tan' },
    { rating: 7.5, colour: 'brown' },
    { rating: 10, colour: 'red' },
    { rating: 15, colour: 'blue' },
    { rating: 20, colour: 'yellow' },
    { rating: 25, colour: 'clear/natural (white)' },
    { rating: 30, colour: 'green' },
    { rating: 35, colour: 'blue-green' },
    { rating: 40, colour: 'orange/amber' },
  ],
  checks: [rising('rating'), between('rating', 0.5, 60), unique('colour')],
});
