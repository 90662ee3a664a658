/**
 * What core asks of a solver of mixed-integer linear programmes. Minimise c.x subject to rowLower <= A x <= rowUpper,
 * lower <= x <= upper, x integer where marked. A is by rows, compressed (CSR). Implemented by packages/solver; any
 * implementation must pass the shared suite in packages/solver/test/conformance.ts.
 */
export interface LinearModel {
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** 1 where the column is integer. */
  readonly integer: Uint8Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  /** Row starts, length rows + 1. */
  readonly start: Int32Array;
  readonly column: Int32Array;
  readonly value: Float64Array;
}

export interface SolveOptions {
  /** Relax integrality. */
  readonly relax?: boolean;
  /** Seconds; default none. */
  readonly timeLimit?: number;
  /** A feasible point to start from. */
  readonly start?: Float64Array;
  /** Solutions not better than this need not be found (cut-off on the objective). */
  readonly cutoff?: number;
  /** Asked between steps; true stops. */
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (p: { readonly incumbent: number | null; readonly bound: number }) => void;
}

export type SolverAnswer =
  | {
      readonly kind: 'optimal';
      readonly x: Float64Array;
      readonly objective: number;
      /** Present for relaxed solves. */
      readonly reducedCost?: Float64Array;
      readonly rowDual?: Float64Array;
    }
  | {
      readonly kind: 'stopped';
      readonly x: Float64Array | null;
      readonly objective: number | null;
      readonly bound: number;
    }
  | { readonly kind: 'infeasible' }
  | { readonly kind: 'unbounded' }
  | { readonly kind: 'failed'; readonly cause: string };

export interface Solver {
  solve(model: LinearModel, options?: SolveOptions): SolverAnswer;
}
