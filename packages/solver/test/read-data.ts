import { readFileSync } from 'node:fs';

/** A file of ./data as text. */
export function dataText(name: string): string {
  return readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8');
}

/** Hands out a file's numbers one after the other; lines that start with # are comments. */
export class Numbers {
  private readonly values: readonly number[];
  private at = 0;

  constructor(name: string) {
    this.values = dataText(name)
      .split('\n')
      .filter((line) => !line.startsWith('#'))
      .join(' ')
      .split(/\s+/)
      .filter((word) => word !== '')
      .map(Number);
  }

  next(): number {
    const value = this.values[this.at++];
    if (value === undefined || Number.isNaN(value)) throw new Error(`no number at place ${this.at - 1}`);
    return value;
  }

  take(count: number): number[] {
    return Array.from({ length: count }, () => this.next());
  }

  /** A file read to the wrong length was read wrongly. */
  end(): void {
    if (this.at !== this.values.length) throw new Error(`${this.values.length - this.at} numbers left over`);
  }
}

/** Columns with one or two costs, and for each row the columns (from 0) that cover it. */
export interface CoverData {
  readonly costs: readonly (readonly number[])[];
  readonly rows: readonly (readonly number[])[];
}

/** OR-Library `scp` and vOptLib `2scp` layout: rows, columns; costs; then each row's count and its columns from 1. */
export function readCover(name: string, objectives: 1 | 2): CoverData {
  const from = new Numbers(name);
  const [rows = 0, columns = 0] = from.take(2);
  const costs = Array.from({ length: objectives }, () => from.take(columns));
  const covers = Array.from({ length: rows }, () => from.take(from.next()).map((column) => column - 1));
  from.end();
  return { costs, rows: covers };
}

/** Profits (one list per objective), and one list of weights with its capacity per resource. Maximise. */
export interface KnapsackData {
  readonly profits: readonly (readonly number[])[];
  readonly resources: readonly { readonly weights: readonly number[]; readonly capacity: number }[];
}

/** OR-Library `mknap1` layout; the optimum stands in the file. */
export function readMultiKnapsacks(name: string): readonly (KnapsackData & { readonly optimum: number })[] {
  const from = new Numbers(name);
  const problems = Array.from({ length: from.next() }, () => {
    const [items = 0, rows = 0, optimum = 0] = from.take(3);
    const profits = [from.take(items)];
    const weights = Array.from({ length: rows }, () => from.take(items));
    const capacities = from.take(rows);
    return {
      profits,
      resources: weights.map((of, row) => ({ weights: of, capacity: capacities[row] ?? 0 })),
      optimum,
    };
  });
  from.end();
  return problems;
}

/** `kp` layout: count, capacity, then "profit weight" per item. */
export function readKnapsack(name: string): KnapsackData {
  const from = new Numbers(name);
  const [items = 0, capacity = 0] = from.take(2);
  const lines = Array.from({ length: items }, () => from.take(2));
  from.end();
  return {
    profits: [lines.map(([profit]) => profit ?? 0)],
    resources: [{ weights: lines.map(([, weight]) => weight ?? 0), capacity }],
  };
}

/** vOptLib `2KP` layout: items, objectives, resources; profits by objective; weights by resource; capacities. */
export function readKnapsackOfTwo(name: string): KnapsackData {
  const from = new Numbers(name);
  const [items = 0, objectives = 0, count = 0] = from.take(3);
  const profits = Array.from({ length: objectives }, () => from.take(items));
  const weights = Array.from({ length: count }, () => from.take(items));
  const capacities = from.take(count);
  from.end();
  return {
    profits,
    resources: weights.map((of, row) => ({ weights: of, capacity: capacities[row] ?? 0 })),
  };
}

/** One pair of numbers a line. */
export function readPoints(name: string): readonly (readonly [number, number])[] {
  return dataText(name)
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map((line) => {
      const [a, b] = line.trim().split(/\s+/).map(Number);
      if (a === undefined || b === undefined) throw new Error(`not a pair: ${line}`);
      return [a, b] as const;
    });
}
