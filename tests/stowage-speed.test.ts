import { stow } from '@waymend/core/stowing/stow';
import { checkStowage } from '@waymend/planner/checking/stowage/check-stowage';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { kitOf150 } from './support/kit-of-150.ts';

const solver = await createHighsSolver();

// How long it takes is measured by `npm run bench`; here only that it ends, and where.
describe('150 belongings into 14 bags', () => {
  it('[M14] every level proven or within 1 %, nothing without a place, no danger, and the check passes', () => {
    const problem = kitOf150(solver);
    expect(problem.pieces).toHaveLength(150);
    expect(problem.bags).toHaveLength(14);
    const { stowage, levels, broken, gap, stoppedBy } = stow(problem, solver);
    expect(stoppedBy).toBeNull();
    expect(gap).toBeLessThanOrEqual(0.01);
    const value = (name: string) => levels.find(({ level }) => level === name)?.value;
    expect(value('unplaced')).toBe(0);
    expect(value('danger')).toBe(0);
    const report = checkStowage(problem, stowage, { levels, broken: broken.map(({ rule }) => rule) });
    expect(report.faults).toEqual([]);
  }, 60_000);
});
