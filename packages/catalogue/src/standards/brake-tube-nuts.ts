import { defineTable } from '../shape/define-table.ts';
import { between, oneOf, unique } from '../shape/table-checks.ts';

/** Nuts on brake tube. M10x1 starts in a 3/8-24 port and then strips it: the two never mix. */
export const BRAKE_TUBE_NUTS = defineTable({
  id: 'brake-tube-nuts',
  title: 'Brake tube nuts',
  citation: {
    body: 'brake tube trade',
    document: 'nut threads by tube',
    edition: 'not stated',
    part: 'thread; wrench widths from memory',
    obtained: 'secondary',
    through: 'a brake line supplier page',
  },
  columns: {
    nut: { title: 'Nut thread', unit: 'text' },
    tube: { title: 'Tube', unit: 'in', gaps: true },
    diameter: { title: 'Thread diameter', unit: 'mm' },
    wrench: { title: 'Flare wrench', unit: 'text', status: 'recalled' },
    never: { title: 'Never into a port of', unit: 'text', gaps: true },
  },
  rows: [
    { nut: '3/8-24', tube: '3/16', diameter: 9.525, wrench: '3/8 in or 7/16 in', never: 'M10x1' },
    { nut: 'M10x1', tube: '3/16', diameter: 10, wrench: '10 mm or 11 mm', never: '3/8-24' },
    { nut: '7/16-24', tube: '1/4', diameter: 11.1125, wrench: '7/16 in', never: null },
    { nut: 'M12x1', tube: null, diameter: 12, wrench: '13 mm', never: null, status: 'recalled' },
  ],
  checks: [
    unique('nut'),
    between('diameter', 8, 16),
    oneOf('tube', ['3/16', '1/4']),
    {
      name: 'a nut never to be mixed names the other, and they are within 6 % of each other',
      run: (rows) =>
        rows.flatMap((row) => {
          if (row.never === null) return [];
          const other = rows.find((candidate) => candidate.nut === row.never);
          const close = other !== undefined && Math.abs(other.diameter / row.diameter - 1) < 0.06;
          return close && other.never === row.nut ? [] : [`${row.nut}: never ${row.never}`];
        }),
    },
  ],
});
