import type { Solver } from '@waymend/core/choosing/solver-port';
import { createHighsSolver } from '../src/highs-solver.ts';
import type { HighsSolver } from '../src/highs-solver.ts';
import { conformance } from './conformance.ts';
import { sessionConformance } from './conformance/sessions.ts';

const made = new WeakMap<Solver, HighsSolver>();

function memoryBytes(solver: Solver): number {
  return made.get(solver)?.memoryBytes() ?? 0;
}

conformance({
  name: 'HiGHS',
  create: async () => {
    const highs = await createHighsSolver();
    made.set(highs, highs);
    return highs;
  },
  memoryBytes,
});

// Without sessions of its own core makes do with whole solves (core/choosing/relaxed-session.ts).
sessionConformance({
  name: 'HiGHS without sessions',
  create: async () => {
    const highs = await createHighsSolver();
    return { solve: (model, options) => highs.solve(model, options) };
  },
});
