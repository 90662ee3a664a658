import { LinearBuilder } from '@waymend/core/choosing/linear-builder';
import { stream } from '@waymend/core/choosing/random-problem';
import type { LinearModel, SolverAnswer } from '@waymend/core/choosing/solver-port';
import { expect } from 'vitest';

/** A row as lower <= sum of coefficient x column <= upper; coefficients by column, 0 where a column has no part. */
export type Row = readonly [lower: number, coefficients: readonly number[], upper: number];

/** A model small enough to reason about; minimised. */
export interface Small {
  readonly cost: readonly number[];
  readonly rows: readonly Row[];
  /** Default 0 and Infinity. */
  readonly lower?: readonly number[];
  readonly upper?: readonly number[];
  /** Default none. */
  readonly integer?: readonly boolean[];
}

/** A small model written out row by row. */
export function model({ cost, rows, lower, upper, integer }: Small): LinearModel {
  const builder = new LinearBuilder();
  cost.forEach((_, j) => builder.column(lower?.[j] ?? 0, upper?.[j] ?? Infinity, integer?.[j] ?? false));
  for (const [least, coefficients, most] of rows) {
    builder.row(
      least,
      most,
      coefficients.map((value, j) => [j, value] as const),
    );
  }
  return builder.build(Float64Array.from(cost));
}

export type Optimal = Extract<SolverAnswer, { kind: 'optimal' }>;
export type Stopped = Extract<SolverAnswer, { kind: 'stopped' }>;

/** The answer, or an error that says what came instead. */
export function optimal(answer: SolverAnswer): Optimal {
  if (answer.kind !== 'optimal') throw new Error(`not optimal: ${JSON.stringify(answer)}`);
  return answer;
}

/** The answer of a search cut short, or an error. */
export function stopped(answer: SolverAnswer): Stopped {
  if (answer.kind !== 'stopped') throw new Error(`not stopped: ${answer.kind}`);
  return answer;
}

/** Equal to nine places. */
export function expectVector(actual: ArrayLike<number> | undefined, expected: readonly number[]): void {
  expect(actual).toHaveLength(expected.length);
  expected.forEach((value, j) => expect(actual?.[j], `place ${j}`).toBeCloseTo(value, 9));
}

/** Objective of x, and by how much x breaks a row, a bound or integrality at most. */
export function measure(
  of: LinearModel,
  x: ArrayLike<number>,
): { readonly objective: number; readonly broken: number } {
  let broken = 0;
  const keep = (value: number, lower: number | undefined, upper: number | undefined): void => {
    broken = Math.max(broken, (lower ?? 0) - value, value - (upper ?? 0));
  };
  for (let row = 0; row < of.rowLower.length; row++) {
    let activity = 0;
    for (let at = of.start[row] ?? 0; at < (of.start[row + 1] ?? 0); at++) {
      activity += (of.value[at] ?? 0) * (x[of.column[at] ?? 0] ?? 0);
    }
    keep(activity, of.rowLower[row], of.rowUpper[row]);
  }
  for (let j = 0; j < of.cost.length; j++) {
    const value = x[j] ?? Number.NaN;
    keep(value, of.lower[j], of.upper[j]);
    if (of.integer[j] === 1) broken = Math.max(broken, Math.abs(value - Math.round(value)));
  }
  return { objective: of.cost.reduce((sum, cost, j) => sum + cost * (x[j] ?? 0), 0), broken };
}

/**
 * A multi-dimensional knapsack whose profits follow its weights: a plan is found at once, its proof takes minutes. Weights
 * and profits are whole, so any two objectives differ by at least 1.
 */
export function longKnapsack(items = 120, rows = 10, number = 1): LinearModel {
  const next = stream(number);
  const weights = Array.from({ length: rows }, () =>
    Array.from({ length: items }, () => 1 + Math.floor(1000 * next())),
  );
  const profit = Array.from({ length: items }, (_, j) =>
    Math.round(weights.reduce((sum, of) => sum + (of[j] ?? 0), 0) / rows + 500 * next()),
  );
  return model({
    cost: profit.map((of) => -of),
    rows: weights.map(
      (of) => [-Infinity, of, Math.floor(of.reduce((sum, one) => sum + one, 0) / 2)] as const,
    ),
    upper: profit.map(() => 1),
    integer: profit.map(() => true),
  });
}

/** A point of `longKnapsack`: items in their order while they fit. */
export function firstFit(of: LinearModel): Float64Array {
  const x = new Float64Array(of.cost.length);
  for (let j = 0; j < x.length; j++) {
    x[j] = 1;
    if (measure(of, x).broken > 0) x[j] = 0;
  }
  return x;
}

/** Small knapsack with two rows and large profits that are close together: a relative gap of 1e-4 would stop too soon. */
export function closeKnapsack(number: number): LinearModel {
  const next = stream(number);
  const items = 12;
  const list = (of: () => number): number[] => Array.from({ length: items }, of);
  const weights = [
    list(() => 20 + Math.floor(80 * next())),
    list(() => 20 + Math.floor(80 * next())),
  ] as const;
  return model({
    cost: list(() => -(100_000 + Math.floor(300 * next()))),
    rows: weights.map(
      (of) => [-Infinity, of, Math.floor(of.reduce((sum, one) => sum + one, 0) * 0.45)] as const,
    ),
    upper: list(() => 1),
    integer: new Array<boolean>(items).fill(true),
  });
}

/** Least objective over every subset of at most 20 yes-or-no columns. */
export function exhaustive(of: LinearModel): number {
  const x = new Float64Array(of.cost.length);
  let best = Infinity;
  for (let subset = 0; subset < 1 << x.length; subset++) {
    for (let j = 0; j < x.length; j++) x[j] = (subset >> j) & 1;
    const { objective, broken } = measure(of, x);
    if (broken === 0 && objective < best) best = objective;
  }
  return best;
}

/** Twelve weights of about ten million and room for some of them less one: a plan one unit too heavy is always near. */
export function heavyKnapsack(number: number): LinearModel {
  const next = stream(number);
  const weights = Array.from({ length: 12 }, () => 10_000_000 + Math.floor(1_000_000 * next()));
  const room = weights.reduce((sum, one) => sum + (next() < 0.5 ? one : 0), -1);
  return model({
    cost: weights.map((one) => -Math.round(one / 1000)),
    rows: [[-Infinity, weights, Math.max(0, room)]],
    upper: weights.map(() => 1),
    integer: weights.map(() => true),
  });
}

/** 25 items and two rows, profits of 20 to 79: too many plans for every subset, and many near the best. */
export function wideKnapsack(number: number): LinearModel {
  const next = stream(number);
  const list = (of: () => number): number[] => Array.from({ length: 25 }, of);
  const weights = [list(() => 20 + Math.floor(80 * next())), list(() => 20 + Math.floor(80 * next()))];
  return model({
    cost: list(() => -(20 + Math.floor(60 * next()))),
    rows: weights.map(
      (of) => [-Infinity, of, Math.floor(of.reduce((sum, one) => sum + one, 0) * 0.45)] as const,
    ),
    upper: list(() => 1),
    integer: new Array<boolean>(25).fill(true),
  });
}
