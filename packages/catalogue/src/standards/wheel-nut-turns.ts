import { defineTable } from '../shape/define-table.ts';
import { between, unique } from '../shape/table-checks.ts';

/** Whole turns a wheel nut must at least go on: fewer, and the thread is not carrying. */
export const WHEEL_NUT_TURNS = defineTable({
  id: 'wheel-nut-turns',
  title: 'Least turns of a wheel nut',
  citation: {
    body: 'wheel fitting trade',
    document: 'generic list by stud',
    edition: 'not stated',
    part: 'least turns of engagement',
    obtained: 'secondary',
    through: 'a wheel adapter supplier and two copies of its list',
  },
  columns: {
    thread: { title: 'Thread', unit: 'text' },
    pitch: { title: 'Pitch', unit: 'mm' },
    turns: { title: 'Least turns', unit: 'count' },
  },
  rows: [
    { thread: 'M12x1.5', pitch: 1.5, turns: 6.5 },
    { thread: 'M12x1.25', pitch: 1.25, turns: 8 },
    { thread: 'M14x1.5', pitch: 1.5, turns: 7.5 },
  ],
  checks: [
    unique('thread'),
    between('turns', 4, 15),
    {
      name: 'turns x pitch is 0.7 to 0.9 of the stud',
      run: (rows) =>
        rows.flatMap((row) => {
          const share = (row.turns * row.pitch) / Number(row.thread.slice(1).split('x')[0]);
          return share >= 0.7 && share <= 0.9 ? [] : [`${row.thread}: ${share.toFixed(2)} of the diameter`];
        }),
    },
  ],
});
