import type { LinearBuilder } from '../choosing/linear-builder.ts';
import type { Layout } from './lay-out.ts';
import type { StowPiece } from './stow-problem.ts';

/** A column that says piece p lies in place s. */
export interface Lies {
  readonly p: number;
  readonly piece: StowPiece;
  readonly s: number;
  readonly column: number;
}

/** The model under construction, for the parts that add to it. */
export interface Draft {
  readonly layout: Layout;
  readonly builder: LinearBuilder;
  readonly liesOf: readonly (readonly Lies[])[];
  /** By place. */
  readonly liesIn: readonly (readonly Lies[])[];
  readonly rides: readonly number[];
  /** Columns of piece p in bag b. */
  readonly inBag: (p: number, b: number) => readonly Lies[];
  readonly charge: (level: number, column: number, cost: number) => void;
}

export type Term = readonly [column: number, value: number];

/** A row with an upper limit, left out where it could not be passed. */
export function atMost(builder: LinearBuilder, terms: readonly Term[], limit: number): void {
  if (terms.reduce((sum, [, value]) => sum + Math.max(0, value), 0) > limit)
    builder.row(-Infinity, limit, terms);
}
