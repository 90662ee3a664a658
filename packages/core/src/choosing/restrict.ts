import type { LinearModel } from './solver-port.ts';

/** A model without its fixed columns and idle rows, and the way back. */
export interface RestrictedModel {
  readonly model: LinearModel;
  /** Cost of the fixed columns. */
  readonly constant: number;
  readonly expand: (x: ArrayLike<number>) => Float64Array;
  /** Some row cannot hold at the fixed values. */
  readonly impossible: boolean;
}

/**
 * Substitutes columns with equal bounds, and drops rows that the remaining bounds keep anyway. Sub-problems after
 * reduced-cost fixing are a fraction of the whole, and solvers start faster on them.
 */
export function restrict(
  model: LinearModel,
  lower: Float64Array,
  upper: Float64Array,
  cost: Float64Array,
  rowLower: Float64Array = model.rowLower,
  rowUpper: Float64Array = model.rowUpper,
): RestrictedModel {
  const size = cost.length;
  const place = new Int32Array(size).fill(-1);
  const kept: number[] = [];
  let constant = 0;
  for (let j = 0; j < size; j++) {
    if (lower[j] === upper[j]) {
      constant += (cost[j] ?? 0) * (lower[j] ?? 0);
      continue;
    }
    place[j] = kept.length;
    kept.push(j);
  }
  const start: number[] = [0];
  const column: number[] = [];
  const value: number[] = [];
  const newLower: number[] = [];
  const newUpper: number[] = [];
  let impossible = false;
  for (let row = 0; row < rowLower.length; row++) {
    let fixed = 0;
    let least = 0;
    let most = 0;
    const from = column.length;
    for (let at = model.start[row] ?? 0, end = model.start[row + 1] ?? 0; at < end; at++) {
      const j = model.column[at] ?? 0;
      const a = model.value[at] ?? 0;
      const low = lower[j] ?? 0;
      const high = upper[j] ?? 0;
      if (low === high) {
        fixed += a * low;
        continue;
      }
      least += a > 0 ? a * low : a * high;
      most += a > 0 ? a * high : a * low;
      column.push(place[j] ?? 0);
      value.push(a);
    }
    const down = (rowLower[row] ?? -Infinity) - fixed;
    const up = (rowUpper[row] ?? Infinity) - fixed;
    if (least > up + 1e-6 || most < down - 1e-6) impossible = true;
    if (least >= down && most <= up) {
      column.length = from;
      value.length = from;
      continue;
    }
    start.push(column.length);
    newLower.push(down);
    newUpper.push(up);
  }
  return {
    model: {
      cost: Float64Array.from(kept, (j) => cost[j] ?? 0),
      lower: Float64Array.from(kept, (j) => lower[j] ?? 0),
      upper: Float64Array.from(kept, (j) => upper[j] ?? 0),
      integer: Uint8Array.from(kept, (j) => model.integer[j] ?? 0),
      rowLower: Float64Array.from(newLower),
      rowUpper: Float64Array.from(newUpper),
      start: Int32Array.from(start),
      column: Int32Array.from(column),
      value: Float64Array.from(value),
    },
    constant,
    expand(x) {
      const full = lower.slice();
      kept.forEach((j, at) => {
        full[j] = x[at] ?? 0;
      });
      return full;
    },
    impossible,
  };
}
