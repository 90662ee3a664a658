import type { TripAnswer } from '@waymend/planner/answer/plan-answer';

export type Expected = TripAnswer['expected'];

export interface ExpectedRow {
  readonly group: string;
  readonly title: string;
  readonly failures: number;
  readonly stopping: number;
  /** What it was before; null when there is nothing to compare with, or nothing has changed. */
  readonly before: number | null;
}

/** Shares below this of the whole are shown together. */
const SMALL = 0.01;

/** Groups by how often they fail on this trip, most first; the rest in one row. `before`: the trip as it was. */
export function expectedRows(
  expected: Expected,
  before: Expected | null,
): {
  readonly rows: readonly ExpectedRow[];
  readonly rest: number;
  readonly total: Totals;
  readonly was: Totals | null;
} {
  const old = new Map(before?.map((g) => [g.group, g.failures]));
  const total = totals(expected);
  const sorted = [...expected].sort((a, b) => b.failures - a.failures || (a.group < b.group ? -1 : 1));
  const shown = sorted.filter(
    ({ failures, group }) => failures >= SMALL * total.failures || changed(old.get(group), failures),
  );
  const rest = sorted.filter((g) => !shown.includes(g)).reduce((sum, { failures }) => sum + failures, 0);
  const was = before === null ? null : totals(before);
  return {
    rows: shown.map(({ group, title, failures, stopping }) => {
      const then = old.get(group);
      return { group, title, failures, stopping, before: changed(then, failures) ? (then ?? null) : null };
    }),
    rest,
    total,
    was: was !== null && changed(was.failures, total.failures) ? was : null,
  };
}

export interface Totals {
  readonly failures: number;
  readonly stopping: number;
}

export function totals(expected: Expected): Totals {
  return expected.reduce(
    (sum, { failures, stopping }) => ({
      failures: sum.failures + failures,
      stopping: sum.stopping + stopping,
    }),
    { failures: 0, stopping: 0 },
  );
}

/** By more than the two figures that are shown. */
function changed(before: number | undefined, now: number): boolean {
  return before !== undefined && Math.abs(before - now) > 0.005 * Math.max(before, now, 1e-9);
}

/** An expected number with two figures: 3.1, 0.42, 0.0071. */
export function expectedText(value: number): string {
  if (!(value > 0)) return '0';
  if (value >= 9.95) return String(Math.round(value));
  return value.toPrecision(2);
}
