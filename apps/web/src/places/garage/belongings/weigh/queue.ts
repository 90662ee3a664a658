import type { Row } from '../rows.ts';

/** What is left to weigh and how much of the whole is still a guess; grams of all copies. */
export interface WeighQueue {
  /** Heaviest first; what has no mass at all before everything, since nothing is known of it. */
  readonly rows: readonly Row[];
  readonly weighed: number;
  readonly estimated: number;
  readonly weighedThings: number;
  readonly things: number;
}

/** Owned single things that nobody has weighed. What was passed over comes last, in the order it was passed over. */
export function weighQueue(rows: readonly Row[], passed: readonly string[]): WeighQueue {
  let weighed = 0;
  let estimated = 0;
  let weighedThings = 0;
  let things = 0;
  const open: Row[] = [];
  for (const row of rows) {
    if (row.contents !== null || row.belonging.forSale) continue;
    things += 1;
    if (row.estimated) {
      estimated += row.total;
      open.push(row);
    } else {
      weighed += row.total;
      weighedThings += 1;
    }
  }
  const place = new Map(passed.map((id, i) => [id, i + 1]));
  const order = (a: Row, b: Row): number =>
    (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0) ||
    Number(b.each === null) - Number(a.each === null) ||
    b.total - a.total ||
    (a.nameKey < b.nameKey ? -1 : 1);
  return { rows: open.sort(order), weighed, estimated, weighedThings, things };
}
