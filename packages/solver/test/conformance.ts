import { LinearBuilder } from '@waymend/core/choosing/linear-builder';
import { stream } from '@waymend/core/choosing/random-problem';
import { relaxedSession } from '@waymend/core/choosing/relaxed-session';
import type { LinearModel, SolveOptions, Solver, SolverAnswer } from '@waymend/core/choosing/solver-port';
import { describe, expect, it } from 'vitest';

/** A row as lower <= sum of coefficient x column <= upper; coefficients by column, 0 where a column has no part. */
type Row = readonly [lower: number, coefficients: readonly number[], upper: number];

interface Small {
  readonly cost: readonly number[];
  readonly rows: readonly Row[];
  /** Default 0 and Infinity. */
  readonly lower?: readonly number[];
  readonly upper?: readonly number[];
  /** Default none. */
  readonly integer?: readonly boolean[];
}

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

type Optimal = Extract<SolverAnswer, { kind: 'optimal' }>;
type Stopped = Extract<SolverAnswer, { kind: 'stopped' }>;

function optimal(answer: SolverAnswer): Optimal {
  if (answer.kind !== 'optimal') throw new Error(`not optimal: ${JSON.stringify(answer)}`);
  return answer;
}

function stopped(answer: SolverAnswer): Stopped {
  if (answer.kind !== 'stopped') throw new Error(`not stopped: ${answer.kind}`);
  return answer;
}

function expectVector(actual: ArrayLike<number> | undefined, expected: readonly number[]): void {
  expect(actual).toHaveLength(expected.length);
  expected.forEach((value, j) => expect(actual?.[j], `place ${j}`).toBeCloseTo(value, 9));
}

/** Objective of x, and by how much x breaks a row, a bound or integrality at most. */
function measure(
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
function firstFit(of: LinearModel): Float64Array {
  const x = new Float64Array(of.cost.length);
  for (let j = 0; j < x.length; j++) {
    x[j] = 1;
    if (measure(of, x).broken > 0) x[j] = 0;
  }
  return x;
}

/** Small knapsack with two rows and large profits that are close together: a relative gap of 1e-4 would stop too soon. */
function closeKnapsack(number: number): LinearModel {
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

function exhaustive(of: LinearModel): number {
  const x = new Float64Array(of.cost.length);
  let best = Infinity;
  for (let subset = 0; subset < 1 << x.length; subset++) {
    for (let j = 0; j < x.length; j++) x[j] = (subset >> j) & 1;
    const { objective, broken } = measure(of, x);
    if (broken === 0 && objective < best) best = objective;
  }
  return best;
}

export interface Suite {
  readonly name: string;
  readonly create: () => Promise<Solver>;
  /** Bytes the solver holds. */
  readonly memoryBytes: (solver: Solver) => number;
}

/**
 * What core relies on in any solver behind its port (core/choosing/solver-port.ts). Every optimum of a small model was worked
 * out by hand; the reasoning stands beside it.
 */
export function conformance({ name, create, memoryBytes }: Suite): void {
  describe(`${name}: relaxed models`, async () => {
    const solver = await create();
    const solve = (small: Small, options: SolveOptions = {}) => solver.solve(model(small), options);

    // min 2x + 3y with x + y >= 4, x + 3y >= 6. Both rows hold at x = 3, y = 1: objective 9. Duals u, v >= 0 with
    // u + v = 2 and u + 3v = 3 give v = 1/2, u = 3/2; 4u + 6v = 9 confirms it.
    const twoRows: Small = {
      cost: [2, 3],
      rows: [
        [4, [1, 1], Infinity],
        [6, [1, 3], Infinity],
      ],
    };

    it('two rows that bind: point, objective, duals, no reduced costs', () => {
      const answer = optimal(solve(twoRows));
      expect(answer.objective).toBeCloseTo(9, 9);
      expectVector(answer.x, [3, 1]);
      expectVector(answer.rowDual, [1.5, 0.5]);
      expectVector(answer.reducedCost, [0, 0]);
    });

    it('rows from above have duals of the other sign', () => {
      // min -3x - 5y, x <= 4, 2y <= 12, 3x + 2y <= 18 as rows: the corner (2, 6), objective -36; duals 0, -3/2, -1.
      const answer = optimal(
        solve({
          cost: [-3, -5],
          rows: [
            [-Infinity, [1, 0], 4],
            [-Infinity, [0, 2], 12],
            [-Infinity, [3, 2], 18],
          ],
        }),
      );
      expect(answer.objective).toBeCloseTo(-36, 9);
      expectVector(answer.x, [2, 6]);
      expectVector(answer.rowDual, [0, -1.5, -1]);
    });

    it('columns at their bounds have reduced costs: below 0 at the upper one, above 0 at the lower one', () => {
      // min -4a + 5b + c with a + b + c >= 2, a <= 1.5. a is worth having to its limit; c makes up the rest, so the row's dual
      // is 1, and reduced costs are -4 - 1 = -5, 5 - 1 = 4, 0.
      const answer = optimal(
        solve({ cost: [-4, 5, 1], rows: [[2, [1, 1, 1], Infinity]], upper: [1.5, 9, 9] }),
      );
      expect(answer.objective).toBeCloseTo(-5.5, 9);
      expectVector(answer.x, [1.5, 0, 0.5]);
      expectVector(answer.rowDual, [1]);
      expectVector(answer.reducedCost, [-5, 4, 0]);
    });

    it('strong duality: duals and reduced costs add up to the objective', () => {
      // The identity core's certified bound is made of: c.x = sum of dual x side + sum of reduced cost x bound.
      const of = longKnapsack(40, 4);
      const answer = optimal(solver.solve(of, { relax: true }));
      let bound = 0;
      of.rowUpper.forEach((side, row) => {
        const dual = answer.rowDual?.[row] ?? Number.NaN;
        expect(dual).toBeLessThanOrEqual(1e-9);
        bound += dual * side;
      });
      // Every column lies between 0 and 1: only negative reduced costs count.
      answer.reducedCost?.forEach((d) => {
        bound += Math.min(0, d);
      });
      expect(bound / answer.objective).toBeCloseTo(1, 9);
      expect(measure({ ...of, integer: new Uint8Array(40) }, answer.x).broken).toBeLessThan(1e-8);
    });

    it('ranged rows, equal rows, free and negative columns', () => {
      // x + y = 1 with x free, y >= -3 and 2 <= x - y <= 8: min x is at x - y = 2, so x = 1.5, y = -0.5.
      const small: Small = {
        cost: [1, 0],
        rows: [
          [1, [1, 1], 1],
          [2, [1, -1], 8],
        ],
        lower: [-Infinity, -3],
      };
      const answer = optimal(solve(small));
      expectVector(answer.x, [1.5, -0.5]);
      // And max x: y falls to -3, so x = 4 (x - y = 7, within the range).
      expectVector(optimal(solve({ ...small, cost: [-1, 0] })).x, [4, -3]);
    });

    it('no rows, no columns, a row without entries', () => {
      expectVector(optimal(solve({ cost: [1, -1], rows: [], upper: [3, 3] })).x, [0, 3]);
      expect(optimal(solve({ cost: [], rows: [] })).objective).toBe(0);
      expect(solve({ cost: [], rows: [[1, [], Infinity]] }).kind).toBe('infeasible');
      expect(optimal(solve({ cost: [1], rows: [[-1, [0], 1]] })).objective).toBe(0);
      expect(solve({ cost: [1], rows: [[1, [0], 2]] }).kind).toBe('infeasible');
    });

    it('infeasible: two rows that exclude each other', () => {
      const rows: readonly Row[] = [
        [3, [1, 1], Infinity],
        [-Infinity, [1, 1], 2],
      ];
      expect(solve({ cost: [1, 1], rows }).kind).toBe('infeasible');
      expect(solve({ cost: [-1, 0], rows }).kind).toBe('infeasible');
    });

    it('unbounded: nothing holds the cost', () => {
      expect(solve({ cost: [-1], rows: [] }).kind).toBe('unbounded');
      expect(solve({ cost: [-1, 0], rows: [[-Infinity, [1, -1], 4]] }).kind).toBe('unbounded');
    });

    it('relaxing drops integrality, and integrality counts when it is not relaxed', () => {
      const small: Small = { cost: [-1], rows: [[-Infinity, [2], 5]], integer: [true] };
      expect(optimal(solve(small, { relax: true })).objective).toBeCloseTo(-2.5, 9);
      expect(optimal(solve(small)).objective).toBeCloseTo(-2, 9);
    });

    it('a cut-off below the optimum leaves nothing; at the optimum it changes nothing', () => {
      expect(solve(twoRows, { cutoff: 8.5 }).kind).toBe('infeasible');
      expect(optimal(solve(twoRows, { cutoff: 9.5 })).objective).toBeCloseTo(9, 9);
    });
  });

  sessionConformance({ name, create });

  describe(`${name}: whole numbers`, async () => {
    const solver = await create();
    const solve = (small: Small, options: SolveOptions = {}) => solver.solve(model(small), options);

    it('the best whole point is not the rounded one', () => {
      // max 5x + 8y, x + y <= 6, 5x + 9y <= 45. Relaxed (2.25, 3.75), value 41.25; rounded (2, 4) breaks the second row,
      // (2, 3) is worth 34. Best: (0, 5), worth 40.
      const small: Small = {
        cost: [-5, -8],
        rows: [
          [-Infinity, [1, 1], 6],
          [-Infinity, [5, 9], 45],
        ],
        integer: [true, true],
      };
      const answer = optimal(solve(small));
      expect(answer.objective).toBeCloseTo(-40, 9);
      expectVector(answer.x, [0, 5]);
      const relaxed = optimal(solve(small, { relax: true }));
      expect(relaxed.objective).toBeCloseTo(-41.25, 9);
      expectVector(relaxed.x, [2.25, 3.75]);
    });

    it('whole and other columns together', () => {
      // max 3x + y, x whole, 2x + y <= 7.5, y <= 2: x = 3 leaves y = 1.5, worth 10.5; x = 2, y = 2 is worth 8.
      const answer = optimal(
        solve({
          cost: [-3, -1],
          rows: [[-Infinity, [2, 1], 7.5]],
          upper: [10, 2],
          integer: [true, false],
        }),
      );
      expectVector(answer.x, [3, 1.5]);
    });

    it('no whole point: sixes and tens never make fifteen', () => {
      const small: Small = {
        cost: [1, 1],
        rows: [[15, [6, 10], 15]],
        upper: [100, 100],
        integer: [true, true],
      };
      expect(solve(small).kind).toBe('infeasible');
      expect(optimal(solve(small, { relax: true })).objective).toBeCloseTo(1.5, 9);
    });

    it('large coefficients do not leak: one unit too many in a hundred million is too many', () => {
      // Ten columns of weight 10,000,000 + j, room for all less 1: nine of them at most, the lightest stays behind. A column
      // that counts as whole within a millionth would make room for all ten.
      const weights = Array.from({ length: 10 }, (_, j) => 10_000_000 + j);
      const sum = weights.reduce((all, one) => all + one, 0);
      const small: Small = {
        cost: weights.map((one) => -one),
        rows: [[-Infinity, weights, sum - 1]],
        upper: weights.map(() => 1),
        integer: weights.map(() => true),
      };
      const answer = optimal(solve(small));
      expect(answer.objective).toBeCloseTo(10_000_000 - sum, 0);
      expectVector(answer.x, [0, 1, 1, 1, 1, 1, 1, 1, 1, 1]);
    });

    it('a yes-or-no column is not yes by a millionth', () => {
      // x = 1 needs 1,000,000 y >= 1: y must be 1, not a millionth.
      const answer = optimal(
        solve({
          cost: [0, 1],
          rows: [[0, [-1, 1e6], Infinity]],
          lower: [1, 0],
          upper: [1, 1],
          integer: [false, true],
        }),
      );
      expectVector(answer.x, [1, 1]);
    });

    it('whole columns below 0', () => {
      // min x with 3x >= -10, x whole: -3.
      const small: Small = { cost: [1], rows: [[-10, [3], Infinity]], lower: [-9], integer: [true] };
      expectVector(optimal(solve(small)).x, [-3]);
    });

    it('unbounded, and infeasible, with whole columns', () => {
      expect(solve({ cost: [-1], rows: [], integer: [true] }).kind).toBe('unbounded');
      expect(solve({ cost: [-1, 0], rows: [[-Infinity, [1, -1], 4.5]], integer: [true, true] }).kind).toBe(
        'unbounded',
      );
      const rows: readonly Row[] = [[0.4, [1], 0.6]];
      expect(solve({ cost: [1], rows, upper: [1], integer: [true] }).kind).toBe('infeasible');
    });

    it('one in 1.2 million still counts: 30 knapsacks of near-equal plans against every subset', () => {
      for (let number = 1; number <= 30; number++) {
        const of = closeKnapsack(number);
        const answer = optimal(solver.solve(of));
        const { objective, broken } = measure(of, answer.x);
        expect(broken).toBeLessThan(1e-6);
        expect(Math.round(objective), `number ${number}`).toBe(exhaustive(of));
        expect(answer.objective).toBeCloseTo(objective, 4);
      }
    });

    it('cut-off: at the optimum it is found, below it there is nothing', () => {
      for (let number = 1; number <= 5; number++) {
        const of = closeKnapsack(number);
        const best = exhaustive(of);
        expect(Math.round(optimal(solver.solve(of, { cutoff: best + 0.5 })).objective)).toBe(best);
        expect(solver.solve(of, { cutoff: best - 0.5 }).kind).toBe('infeasible');
      }
    });

    it('a gap below 1 loses nothing when objectives are whole', () => {
      for (let number = 6; number <= 15; number++) {
        const of = closeKnapsack(number);
        expect(Math.round(optimal(solver.solve(of, { absoluteGap: 0.9 })).objective)).toBe(exhaustive(of));
      }
    });

    it('takes a start, good, poor or impossible, and finds the same optimum', () => {
      const of = closeKnapsack(3);
      const best = exhaustive(of);
      const first = optimal(solver.solve(of)).x;
      for (const start of [first, firstFit(of), new Float64Array(12), new Float64Array(12).fill(1)]) {
        const given = start.slice();
        expect(Math.round(optimal(solver.solve(of, { start })).objective)).toBe(best);
        expect(start).toEqual(given);
      }
    });

    it('does not write into the model', () => {
      const of = closeKnapsack(2);
      const copy = structuredClone(of);
      solver.solve(of);
      solver.solve(of, { relax: true });
      expect(of).toEqual(copy);
    });
  });

  describe(`${name}: stopping`, async () => {
    const solver = await create();
    const of = longKnapsack();

    /** A stopped answer tells the truth: its point is one, its objective is the point's, its bound is below. */
    function expectHonest(answer: Stopped): void {
      const { x, objective, bound } = answer;
      if (!x || objective === null) throw new Error('no incumbent');
      const recount = measure(of, x);
      expect(recount.broken).toBeLessThan(1e-6);
      expect(recount.objective).toBeCloseTo(objective, 4);
      expect(bound).toBeLessThanOrEqual(objective);
      // No bound can be above a point that is known to exist.
      expect(bound).toBeLessThanOrEqual(measure(of, firstFit(of)).objective);
    }

    it('the time limit ends the search with an incumbent and a bound', () => {
      const before = performance.now();
      const answer = stopped(solver.solve(of, { timeLimit: 1 }));
      // Generous, because the machine may be busy; without the limit it takes minutes.
      expect(performance.now() - before).toBeLessThan(20_000);
      expectHonest(answer);
      const relaxed = optimal(solver.solve(of, { relax: true }));
      // The relaxation is the least a search knows once its root is done, and a plan within a hundredth of it is easy.
      expect(answer.bound).toBeGreaterThanOrEqual(relaxed.objective - 1e-3);
      expect(answer.objective ?? 0).toBeLessThan(relaxed.objective * 0.97);
    });

    it('shouldStop ends the search with what there is', () => {
      let asked = 0;
      const answer = stopped(
        solver.solve(of, {
          timeLimit: 60,
          shouldStop: () => ++asked > 20,
        }),
      );
      expect(asked).toBeGreaterThan(20);
      if (answer.x) expectHonest(answer);
      else expect(answer.objective).toBeNull();
    });

    it('can be stopped at the first question, and solves as ever afterwards', () => {
      const answer = solver.solve(of, { shouldStop: () => true, timeLimit: 60 });
      expect(answer.kind).toBe('stopped');
      expect(optimal(solver.solve(model({ cost: [1], rows: [[2, [1], 5]] }))).objective).toBeCloseTo(2, 9);
      const small = closeKnapsack(4);
      expect(Math.round(optimal(solver.solve(small)).objective)).toBe(exhaustive(small));
    });

    it('a shouldStop that never asks to stop changes nothing', () => {
      const small = closeKnapsack(5);
      expect(Math.round(optimal(solver.solve(small, { shouldStop: () => false })).objective)).toBe(
        exhaustive(small),
      );
    });

    it('a start that no search would find in time is not lost', () => {
      // Six equations that a plan is known to meet, because their right sides are made from it. No search meets them in half
      // a second, so the point must be the start or better.
      const next = stream(5);
      const known = Float64Array.from({ length: 50 }, () => (next() < 0.5 ? 1 : 0));
      const rows = Array.from({ length: 6 }, (): Row => {
        const coefficients = Array.from(known, () => Math.floor(100 * next()));
        const side = coefficients.reduce((sum, one, j) => sum + one * (known[j] ?? 0), 0);
        return [side, coefficients, side];
      });
      const equations = model({
        cost: Array.from(known, () => 1 + Math.floor(100 * next())),
        rows,
        upper: Array.from(known, () => 1),
        integer: Array.from(known, () => true),
      });
      const answer = stopped(solver.solve(equations, { start: known, timeLimit: 0.5 }));
      if (!answer.x) throw new Error('the start is lost');
      const recount = measure(equations, answer.x);
      expect(recount.broken).toBeLessThan(1e-6);
      expect(recount.objective).toBeLessThanOrEqual(measure(equations, known).objective + 1e-6);
      expect(stopped(solver.solve(equations, { timeLimit: 0.5 })).x).toBeNull();
    });

    it('progress tells of plans and bounds that close in on each other', () => {
      const told: { readonly incumbent: number | null; readonly bound: number }[] = [];
      const answer = stopped(solver.solve(of, { timeLimit: 1, onProgress: (p) => told.push(p) }));
      expect(told.length).toBeGreaterThan(0);
      let [best, bound] = [Infinity, -Infinity];
      for (const p of told) {
        expect(p.incumbent ?? Infinity).toBeLessThanOrEqual(best + 1e-6);
        expect(p.bound).toBeGreaterThanOrEqual(bound - 1e-6);
        if (p.incumbent !== null) expect(p.bound).toBeLessThanOrEqual(p.incumbent + 1e-6);
        best = Math.min(best, p.incumbent ?? Infinity);
        bound = Math.max(bound, p.bound);
      }
      expect(best).toBeLessThan(Infinity);
      expect(answer.objective ?? 0).toBeLessThanOrEqual(best + 1e-6);
    });
  });

  describe(`${name}: again and again`, () => {
    it('the same input gives the same vector, in one solver and in another', async () => {
      const [one, other] = [await create(), await create()];
      for (const of of [longKnapsack(30, 3), closeKnapsack(11)]) {
        for (const relax of [false, true]) {
          const first = optimal(one.solve(of, { relax }));
          one.solve(closeKnapsack(12));
          for (const solver of [one, other]) {
            const again = optimal(solver.solve(of, { relax }));
            expect(again.x).toEqual(first.x);
            expect(again.objective).toBe(first.objective);
            expect(again.rowDual).toEqual(first.rowDual);
          }
        }
      }
    });

    it('an answer stays what it was when the solver goes on', async () => {
      const solver = await create();
      const first = optimal(solver.solve(longKnapsack(30, 3), { relax: true }));
      const kept = structuredClone(first);
      for (let number = 1; number <= 20; number++) solver.solve(closeKnapsack(number));
      expect(first).toEqual(kept);
    });

    it('300 solves, whole, relaxed, stopped and in sessions, take no more than 40 MB for good', async () => {
      const solver = await create();
      // 24,000 entries, half a megabyte in any solver, and quickly solved because nothing is worth taking.
      const taking = longKnapsack(300, 80);
      const bulky = { ...taking, cost: taking.cost.map((cost) => -cost) };
      const round = (number: number): void => {
        if (number % 3 === 0) {
          const session = relaxedSession(solver, bulky);
          expect(optimal(session.solve()).objective).toBe(0);
          session.setCost(bulky.cost.map((cost) => 2 * cost));
          expect(optimal(session.solve()).objective).toBe(0);
          session.close();
        } else if (number % 3 === 1) {
          expect(optimal(solver.solve(bulky, { relax: number % 2 === 0 })).objective).toBe(0);
        } else if (number % 2 === 0) {
          stopped(solver.solve(longKnapsack(60, 5), { shouldStop: () => true }));
        } else optimal(solver.solve(closeKnapsack(1 + (number % 30))));
      };
      for (let number = 0; number < 10; number++) round(number);
      const before = memoryBytes(solver);
      expect(before).toBeGreaterThan(0);
      for (let number = 0; number < 300; number++) round(number);
      expect(memoryBytes(solver) - before).toBeLessThan(40e6);
    });
  });
}

/** The part on sessions, for a solver's own and for those core makes out of whole solves. */
export function sessionConformance({ name, create }: Pick<Suite, 'name' | 'create'>): void {
  describe(`${name}: sessions of one relaxed model`, async () => {
    const solver = await create();
    // min x + 2y with x + y >= 3, 0 <= x <= 2, 0 <= y <= 5: x = 2, y = 1, objective 4.
    const base = model({ cost: [1, 2], rows: [[3, [1, 1], Infinity]], upper: [2, 5] });

    it('follows changed bounds, rows and costs, and back', () => {
      const session = relaxedSession(solver, base);
      const now = (): Optimal => optimal(session.solve());
      expectVector(now().x, [2, 1]);
      expectVector(now().rowDual, [2]);
      expectVector(now().reducedCost, [-1, 0]);
      session.setColumnBounds(Float64Array.of(0, 0), Float64Array.of(0.5, 5));
      expectVector(now().x, [0.5, 2.5]);
      session.setRowBounds(0, 5, Infinity);
      expectVector(now().x, [0.5, 4.5]);
      session.setCost(Float64Array.of(3, 1));
      expectVector(now().x, [0, 5]);
      session.setRowBounds(0, 6, Infinity);
      expect(session.solve().kind).toBe('infeasible');
      session.setRowBounds(0, 3, Infinity);
      session.setColumnBounds(Float64Array.of(0, 0), Float64Array.of(2, 5));
      session.setCost(Float64Array.of(1, 2));
      expectVector(now().x, [2, 1]);
      session.close();
    });

    it('leaves the model it was given as it was', () => {
      const session = relaxedSession(solver, base);
      session.setRowBounds(0, 1, 1);
      session.setCost(Float64Array.of(9, 9));
      session.setColumnBounds(Float64Array.of(0, 0), Float64Array.of(1, 1));
      optimal(session.solve());
      session.close();
      expectVector(base.cost, [1, 2]);
      expectVector(base.upper, [2, 5]);
      expect(base.rowLower[0]).toBe(3);
    });

    it('agrees with solving anew over 60 changes, two sessions side by side', () => {
      const next = stream(7);
      const of = longKnapsack(30, 4);
      const relaxed = { ...of, integer: new Uint8Array(30) };
      const sessions = [relaxedSession(solver, of), relaxedSession(solver, of)];
      const state = sessions.map(() => ({ ...relaxed }));
      for (let change = 0; change < 60; change++) {
        const which = change % 2;
        const session = sessions[which];
        const was = state[which];
        if (!session || !was) throw new Error('missing');
        const upper = was.upper.map((u) => (next() < 0.2 ? 1 - u : u));
        const cost = was.cost.map((c) => (next() < 0.1 ? -Math.floor(1000 * next()) : c));
        const row = Math.floor(4 * next());
        const rowUpper = was.rowUpper.slice();
        rowUpper[row] = Math.floor((rowUpper[row] ?? 0) * (0.8 + 0.4 * next()));
        session.setColumnBounds(was.lower, upper);
        session.setCost(cost);
        session.setRowBounds(row, -Infinity, rowUpper[row] ?? 0);
        const changed = { ...was, upper, cost, rowUpper };
        state[which] = changed;
        const here = optimal(session.solve());
        const anew = optimal(solver.solve(changed, { relax: true }));
        expect(Math.abs(here.objective - anew.objective)).toBeLessThan(1e-6);
        expect(measure(changed, here.x).broken).toBeLessThan(1e-7);
      }
      for (const session of sessions) session.close();
    });
  });
}
