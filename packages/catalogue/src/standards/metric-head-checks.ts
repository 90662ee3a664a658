import type { AnyRow, Check } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { everyRow, unique } from '../shape/table-checks.ts';

/** Checks that every table "thread -> what turns it" shares. */

interface Head {
  readonly thread: string;
  readonly size: number;
}

/** Nominal diameter in a metric thread's name: 'M10' and 'M10x1.25' are 10. */
export function diameterOf(thread: string): number {
  const match = /^M(\d+(?:\.\d+)?)(?:x\d+(?:\.\d+)?)?$/.exec(thread);
  return match === null ? Number.NaN : Number(match[1]);
}

const threadsRise: Check<{ readonly thread: string }> = {
  name: 'threads rise',
  run: (rows) =>
    rows.flatMap((row, i) => {
      const [before, now] = [i === 0 ? 0 : diameterOf(rows[i - 1]?.thread ?? ''), diameterOf(row.thread)];
      return now > before ? [] : [`${row.thread} is no metric thread, or is out of order`];
    }),
};

export const sourcesAgree: Check<Numbers<'agree' | 'of'>> = everyRow(
  'at least half of the copies agree',
  (row: Numbers<'agree' | 'of'> & AnyRow) =>
    row.agree <= row.of && row.agree * 2 >= row.of ? null : `${row['thread']}: ${row.agree} of ${row.of}`,
);

/** Never falling, and by how much a head may be larger than its thread. */
function widthFollowsThread(from: number, to: number, strict: boolean): Check<Head> {
  return {
    name: `width ${strict ? 'rises' : 'never falls'}, ${from} to ${to} of the thread`,
    run: (rows) =>
      rows.flatMap((row, i) => {
        const before = rows[i - 1]?.size ?? 0;
        const share = row.size / diameterOf(row.thread);
        const kept = strict ? row.size > before : row.size >= before;
        return kept && share >= from && share <= to
          ? []
          : [`${row.thread}: ${row.size} mm after ${before} mm, ${share.toFixed(3)} of the thread`];
      }),
  };
}

/** Nominal widths are whole or half millimetres (3.2 for M1.6): 5.82 or 9.78 is a least width in the wrong column. */
const nominal = everyRow<Head>('nominal widths, not least ones', (row) =>
  Number.isInteger(row.size * 2) || row.size === 3.2
    ? null
    : `${row.thread}: ${row.size} mm is no nominal width`,
);

/** M10, M12, M14 and M22 are where the older DIN heads and ISO 272:1982 part; six of eight known slips are here. */
const WIDTHS_1982 = {
  'ISO 272:1982': { M10: 16, M12: 18, M14: 21, M22: 34 },
  'DIN before 1982': { M10: 17, M12: 19, M14: 22, M22: 32 },
} as const;

/** Outside hexagons of full size. */
export function hexChecks(
  edition: keyof typeof WIDTHS_1982,
): readonly Check<Head & Numbers<'agree' | 'of'>>[] {
  const widths: Readonly<Record<string, number>> = WIDTHS_1982[edition];
  return [
    unique('thread'),
    threadsRise,
    widthFollowsThread(1.45, 2.1, true),
    nominal,
    sourcesAgree,
    everyRow<Head>(`the four sizes that changed: ${edition}`, (row) => {
      const width = widths[row.thread];
      return width === undefined || width === row.size
        ? null
        : `${row.thread}: ${row.size} mm, ${edition} has ${width}`;
    }),
  ];
}

/** Flanged and small hexagons: narrower than the full ones. */
export const SMALL_HEX_CHECKS: readonly Check<Head>[] = [
  unique('thread'),
  threadsRise,
  widthFollowsThread(1.25, 1.75, true),
  nominal,
];

/** Hexagon sockets: the key is smaller than the thread, and neighbours may share one. */
export const KEY_CHECKS: readonly Check<Head & Numbers<'agree' | 'of'>>[] = [
  unique('thread'),
  threadsRise,
  widthFollowsThread(0.4, 0.9, false),
  nominal,
  sourcesAgree,
];

/** Hexalobular sockets, with threads in order. */
export const LOBE_CHECKS: readonly Check<{ readonly thread: string } & Numbers<'agree' | 'of'>>[] = [
  unique('thread'),
  threadsRise,
  sourcesAgree,
];

/** Hexagon key sizes that are made; keys between them do not exist. */
export const HEX_KEYS: readonly number[] = [1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 19, 22, 24, 27];

/** Lobe numbers never fall as threads grow. */
export const lobeRises: Check<{ readonly thread: string; readonly size: string }> = {
  name: 'lobe numbers rise with the thread',
  run: (rows) =>
    rows.flatMap((row, i) => {
      const before = i === 0 ? 0 : Number(rows[i - 1]?.size.slice(1));
      return /^T\d+$/.test(row.size) && Number(row.size.slice(1)) > before
        ? []
        : [`${row.thread}: ${row.size} after T${before}`];
    }),
};
