import { plan } from '@waymend/core/choosing/plan';
import type { Aim, LimitRow, Outcome, Problem } from '@waymend/core/choosing/problem';
import { randomProblem, stream } from '@waymend/core/choosing/random-problem';
import { workshopProblem } from '@waymend/core/choosing/workshop-problem';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';

const solver = await createHighsSolver();
const BEST: Aim = { kind: 'best-chance' };

/** Too large to try every subset; what must hold between answers is known all the same. */
const medium = (number: number): Problem =>
  number % 2 === 0
    ? randomProblem({
        number,
        pieces: 26,
        needs: 35,
        events: 22,
        massShare: 0.35,
        rows: 1,
        enough: 0.15,
        must: 1,
        gain: 900,
      })
    : workshopProblem({ number, sizes: 5, functions: 9, spares: 4, jobs: 14, events: 16, massShare: 0.35 });

function proven(outcome: Outcome): { loss: number; grams: number; pieces: number } {
  if (outcome.kind !== 'proven') throw new Error(JSON.stringify(outcome));
  return { loss: outcome.loss, grams: outcome.grams, pieces: outcome.choice.carried.length };
}
const lossOf = (outcome: Outcome): number => (outcome.kind === 'proven' ? outcome.loss : Infinity);
const mass = (problem: Problem, change: (limit: number) => number): Problem => ({
  ...problem,
  limits: problem.limits.map(
    (row): LimitRow => (row.id === 'mass' ? { ...row, limit: change(row.limit) } : row),
  ),
});

describe('what holds between answers', () => {
  it('[M6] a gram more to carry never loses anything, and a gram less never gains', () => {
    for (let number = 1; number <= 40; number++) {
      const problem = medium(number);
      const less = lossOf(
        plan(
          mass(problem, (g) => g - 1),
          BEST,
          solver,
        ),
      );
      const exact = lossOf(plan(problem, BEST, solver));
      const more = lossOf(
        plan(
          mass(problem, (g) => g + 1),
          BEST,
          solver,
        ),
      );
      expect(less).toBeGreaterThanOrEqual(exact);
      expect(exact).toBeGreaterThanOrEqual(more);
    }
  });

  it('[M6] one gram below the best plan something is worse: mass or chance', () => {
    for (let number = 1; number <= 30; number++) {
      const problem = medium(number);
      const best = plan(problem, BEST, solver);
      if (best.kind !== 'proven') continue;
      const below = plan(
        mass(problem, () => best.grams - 1),
        BEST,
        solver,
      );
      expect(lossOf(below)).toBeGreaterThan(best.loss);
    }
  });

  it('[M6] another piece to choose from never raises the loss', () => {
    for (let number = 1; number <= 40; number++) {
      const problem = medium(number);
      const next = stream(number);
      const like = Math.floor(next() * problem.pieces.length);
      const copy = problem.pieces.length;
      const source = problem.pieces[like];
      if (!source) throw new Error('no piece');
      const richer: Problem = {
        ...problem,
        pieces: [...problem.pieces, { ...source, id: 'extra', grams: Math.ceil(source.grams * next()) }],
        needs: problem.needs.map((need) =>
          need.kind === 'any'
            ? {
                ...need,
                ways: need.ways.flatMap((way) =>
                  way.pieces.includes(like)
                    ? [way, { ...way, pieces: way.pieces.map((p) => (p === like ? copy : p)) }]
                    : [way],
                ),
              }
            : need,
        ),
      };
      expect(lossOf(plan(richer, BEST, solver))).toBeLessThanOrEqual(lossOf(plan(problem, BEST, solver)));
    }
  });

  it('[M6] the order in which things are listed changes nothing', () => {
    for (let number = 1; number <= 40; number++) {
      const problem = medium(number);
      const next = stream(1000 + number);
      const shuffled = <T>(list: readonly T[]): T[] =>
        list
          .map((item) => ({ item, at: next() }))
          .sort((a, b) => a.at - b.at)
          .map(({ item }) => item);
      const order = shuffled(problem.pieces.map((_, p) => p));
      const place = new Map(order.map((p, at) => [p, at]));
      const at = (p: number): number => place.get(p) ?? -1;
      const moved: Problem = {
        ...problem,
        pieces: order.flatMap((p) => problem.pieces[p] ?? []),
        needs: problem.needs.map((need) =>
          need.kind === 'any'
            ? {
                ...need,
                ways: shuffled(need.ways.map((way) => ({ ...way, pieces: shuffled(way.pieces.map(at)) }))),
              }
            : { ...need, from: shuffled(need.from.map((part) => ({ ...part, piece: at(part.piece) }))) },
        ),
        events: shuffled(problem.events.map((event) => ({ ...event, options: shuffled(event.options) }))),
        limits: problem.limits.map((row) => ({
          ...row,
          carried: shuffled(row.carried.map((part) => ({ ...part, piece: at(part.piece) }))),
        })),
      };
      const [here, there] = [plan(problem, BEST, solver), plan(moved, BEST, solver)];
      if (here.kind !== 'proven') expect(there.kind).toBe(here.kind);
      else expect(proven(there)).toEqual(proven(here));
    }
  });

  it('[M6] least mass at the best loss is the mass of the best plan; less is asked, less is carried', () => {
    for (let number = 1; number <= 30; number++) {
      const problem = medium(number);
      const best = plan(problem, BEST, solver);
      if (best.kind !== 'proven') continue;
      const same = proven(plan(problem, { kind: 'least-mass', maxLoss: best.loss }, solver));
      expect(same).toMatchObject({ loss: best.loss, grams: best.grams });
      const looser = proven(plan(problem, { kind: 'least-mass', maxLoss: best.loss + 400 }, solver));
      expect(looser.grams).toBeLessThanOrEqual(same.grams);
      expect(looser.loss).toBeLessThanOrEqual(best.loss + 400);
      expect(proven(plan(problem, { kind: 'must-do' }, solver)).grams).toBeLessThanOrEqual(looser.grams);
    }
  });
});
