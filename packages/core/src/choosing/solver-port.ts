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
  /**
   * Only points whose objective is at most this are wanted (cut-off). When there is none the answer is `infeasible`;
   * the solver may use the number to prune.
   */
  readonly cutoff?: number;
  /**
   * Stop as optimal once incumbent - bound is at most this; default 0. Below 1 it loses nothing when the objective of
   * every integer point is a whole number.
   */
  readonly absoluteGap?: number;
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

/**
 * One relaxation kept inside the solver and solved again after changes, each time from the last basis. Tens of times
 * faster than building it anew when only a bound or the objective moves.
 */
export interface RelaxedSession {
  setCost(cost: Float64Array): void;
  setRowBounds(row: number, lower: number, upper: number): void;
  /** All column bounds at once. */
  setColumnBounds(lower: Float64Array, upper: Float64Array): void;
  solve(options?: Pick<SolveOptions, 'timeLimit' | 'shouldStop'>): SolverAnswer;
  /** Gives the memory back; the session cannot be used afterwards. */
  close(): void;
}

export interface Solver {
  solve(model: LinearModel, options?: SolveOptions): SolverAnswer;
  /** Optional: absent, `relaxedSession` (./relaxed-session.ts) does the same by whole solves. */
  openRelaxed?(model: LinearModel): RelaxedSession;
}
