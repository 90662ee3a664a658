import { bruteForce } from '@waymend/core/choosing/brute-force';
import { evaluate } from '@waymend/core/choosing/evaluate';
import { frontier } from '@waymend/core/choosing/frontier';
import { plan } from '@waymend/core/choosing/plan';
import type { PlanProgress } from '@waymend/core/choosing/plan';
import type { Aim, Problem } from '@waymend/core/choosing/problem';
import { workshopProblem } from '@waymend/core/choosing/workshop-problem';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { smallProblem } from './support-check.ts';

const solver = await createHighsSolver();
const BEST: Aim = { kind: 'best-chance' };
const workshop = (number: number): Problem =>
  workshopProblem({
    number,
    sizes: 16,
    functions: 30,
    spares: 15,
    jobs: 45,
    events: 70,
    massShare: 0.3,
    volumeShare: 0.4,
  });

/** The size of a real garage, and more trouble: some hundred steps to the proof. */
const large = workshopProblem({
  number: 1,
  sizes: 28,
  functions: 55,
  spares: 30,
  jobs: 110,
  events: 300,
  massShare: 0.3,
  volumeShare: 0.35,
});

describe('stopping early', () => {
  it('[M8] the rounded plan comes with a bound that the optimum keeps', () => {
    let stopped = 0;
    for (let number = 1; number <= 120; number++) {
      const problem = smallProblem(number);
      const best = bruteForce(problem, BEST);
      const rounded = plan(problem, BEST, solver, { roundingOnly: true });
      if (rounded.kind !== 'within') continue;
      stopped++;
      expect(rounded.stoppedBy).toBe('rounding');
      expect(evaluate(problem, rounded.choice).faults).toEqual([]);
      expect(rounded.bound).toBeLessThanOrEqual(best?.evaluation.loss ?? -Infinity);
      expect(rounded.loss).toBeGreaterThanOrEqual(best?.evaluation.loss ?? Infinity);
    }
    expect(stopped).toBeGreaterThan(5);
    const rounded = plan(large, BEST, solver, { roundingOnly: true });
    if (rounded.kind !== 'within') throw new Error(rounded.kind);
    // No source: what a rounding of this size has been seen to reach, with room.
    expect((rounded.loss - rounded.bound) / rounded.loss).toBeLessThan(0.05);
  });

  it('[M8] cancelled after any number of steps: the plan is feasible and its bound true', () => {
    const problem = workshop(1);
    const best = plan(problem, BEST, solver);
    if (best.kind !== 'proven') throw new Error(best.kind);
    const kinds = new Set<string>();
    for (const steps of [1, 3, 8, 20, 60, 150, 400, 1000]) {
      let asked = 0;
      const outcome = plan(problem, BEST, solver, { shouldStop: () => ++asked > steps });
      kinds.add(outcome.kind);
      if (outcome.kind !== 'within') continue;
      expect(outcome.stoppedBy).toBe('cancel');
      expect(outcome.bound).toBeLessThanOrEqual(best.loss);
      expect(outcome.loss).toBeGreaterThanOrEqual(best.loss);
      expect(evaluate(problem, outcome.choice)).toMatchObject({
        feasible: true,
        loss: outcome.loss,
        grams: outcome.grams,
      });
    }
    expect(kinds).toContain('within');
  });

  it('[M8] a time limit by an outside clock stops it the same way', () => {
    const problem = large;
    const best = plan(problem, BEST, solver);
    if (best.kind !== 'proven') throw new Error(best.kind);
    // A clock that leaps: every look at it is a tenth of a second later.
    let now = 0;
    const outcome = plan(problem, BEST, solver, {
      timeLimit: 2,
      clock: () => {
        now += 0.1;
        return now;
      },
    });
    if (outcome.kind !== 'within') throw new Error(outcome.kind);
    expect(outcome.stoppedBy).toBe('time');
    expect(outcome.bound).toBeLessThanOrEqual(best.loss);
    expect(outcome.loss).toBeGreaterThanOrEqual(best.loss);
  });

  it('a time limit without a clock is a mistake of the caller', () => {
    expect(() => plan(smallProblem(1), BEST, solver, { timeLimit: 1 })).toThrow('clock');
  });

  it('[M8] progress only ever gets better, and its bounds and plans close in on the answer', () => {
    const problem = workshop(3);
    const told: PlanProgress[] = [];
    const outcome = plan(problem, BEST, solver, { onProgress: (progress) => told.push(progress) });
    if (outcome.kind !== 'proven') throw new Error(outcome.kind);
    const losses = told.flatMap(({ loss }) => loss ?? []);
    expect(losses.length).toBeGreaterThan(0);
    expect(losses).toEqual([...losses].sort((a, b) => b - a));
    for (const { bound, choice, loss } of told) {
      expect(bound).toBeLessThanOrEqual(outcome.loss);
      if (choice) expect(evaluate(problem, choice)).toMatchObject({ feasible: true, loss });
    }
  });

  it('[M9] a curve that is stopped says so; every point drawn is feasible and its bound true', () => {
    const problem = large;
    // Stopped at once there is still a greedy plan to show, never called proven.
    const atOnce = frontier(problem, solver, { shouldStop: () => true });
    if (atOnce.kind !== 'frontier') throw new Error(atOnce.kind);
    expect(atOnce).toMatchObject({ complete: false, stoppedBy: 'cancel' });
    expect(atOnce.points.length).toBeGreaterThan(0);
    for (const point of atOnce.points) {
      expect(point.proven).toBe(false);
      expect(evaluate(problem, point.choice)).toMatchObject({ feasible: true, loss: point.loss });
    }
    let asked = 0;
    const answer = frontier(problem, solver, { points: 12, shouldStop: () => ++asked > 20_000 });
    if (answer.kind !== 'frontier') throw new Error(answer.kind);
    expect(answer).toMatchObject({ complete: false, stoppedBy: 'cancel' });
    expect(answer.points.length).toBeGreaterThan(0);
    for (const point of answer.points) {
      expect(evaluate(problem, point.choice)).toMatchObject({
        feasible: true,
        loss: point.loss,
        grams: point.grams,
      });
      expect(point.bound).toBeLessThanOrEqual(point.loss);
      expect(point.bound === point.loss || !point.proven).toBe(true);
    }
  });
});

describe('no plan', () => {
  it('[M6] every clash is the least by which that limit alone would have to give', () => {
    let clashes = 0;
    for (let number = 1; number <= 300 && clashes < 25; number++) {
      const problem = smallProblem(number);
      const outcome = plan(problem, BEST, solver);
      if (outcome.kind !== 'no-plan') continue;
      for (const { limit, shortBy } of outcome.clashes) {
        const given = (by: number): Problem => ({
          ...problem,
          limits: problem.limits.map((row) => (row.id === limit ? { ...row, limit: row.limit + by } : row)),
        });
        if (outcome.clashes.length === 1 || bruteForce(given(shortBy), BEST) !== null) {
          clashes++;
          expect(bruteForce(given(shortBy), BEST)).not.toBeNull();
          expect(bruteForce(given(shortBy - 1), BEST)).toBeNull();
        }
      }
      if (outcome.clashes.length > 0) continue;
      // No limit is to blame: without any there is still no plan.
      expect(bruteForce({ ...problem, limits: [] }, BEST)).toBeNull();
      expect((outcome.unmeetable ?? []).length + (outcome.unobtainable ?? []).length).toBeGreaterThan(0);
    }
    expect(clashes).toBeGreaterThan(3);
  });
});
