import type { Solver } from '@waymend/core/choosing/solver-port';

/** One implementation of the port, to be held to it. */
export interface Suite {
  readonly name: string;
  readonly create: () => Promise<Solver>;
  /** Bytes the solver holds. */
  readonly memoryBytes: (solver: Solver) => number;
}
