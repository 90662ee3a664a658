/** How far a berth may be ahead of the front axle and behind it. */
export const BERTH_RANGE_MM = { least: -2000, most: 12_000 } as const;

const STEP_MM = 10;
const LONG_STEP_MM = 100;

/** Where a key takes a berth, the front of the vehicle on the left; null for keys that do not move it. */
export function stepped(xMm: number, key: string, isLong: boolean): number | null {
  const way = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -10, PageUp: 10 }[key];
  if (way === undefined) return null;
  const step = (isLong && Math.abs(way) === 1 ? LONG_STEP_MM : STEP_MM) * way;
  return Math.min(BERTH_RANGE_MM.most, Math.max(BERTH_RANGE_MM.least, Math.round(xMm) + step));
}
