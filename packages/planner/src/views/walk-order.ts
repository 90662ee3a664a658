import type { FittingRow } from './fitting-list.ts';

/** Places in the first round: about what is measured in the time a kettle takes. */
const FIRST_ROUND = 16;

/** A walk round the vehicle in two rounds: first the places that the jobs of the trip lean on most, then all the others. */
export interface Walk {
  readonly first: readonly FittingRow[];
  readonly second: readonly FittingRow[];
}

/** Splits a list of fittings; each round keeps the order of the list, so that nobody walks twice for one round. */
export function walkOrder(rows: readonly FittingRow[]): Walk {
  const leanedOn = rows.filter((r) => r.stops > 0).sort((a, b) => b.stops - a.stops);
  const chosen = new Set(leanedOn.slice(0, FIRST_ROUND).map((r) => r.id));
  return {
    first: rows.filter((r) => chosen.has(r.id)),
    second: rows.filter((r) => !chosen.has(r.id)),
  };
}
