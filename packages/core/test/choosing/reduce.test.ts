import { describe, expect, it } from 'vitest';
import { bruteForce, criteria } from '../../src/choosing/brute-force.ts';
import { evaluate } from '../../src/choosing/evaluate.ts';
import { compile } from '../../src/choosing/compile.ts';
import { KitState } from '../../src/choosing/kit-state.ts';
import type { Aim, Need, Problem, Way } from '../../src/choosing/problem.ts';
import { randomProblem } from '../../src/choosing/random-problem.ts';
import { Implications, needsAsAtoms } from '../../src/choosing/reduce/implied.ts';
import { reduce } from '../../src/choosing/reduce/reduce.ts';

const AIMS: readonly Aim[] = [
  { kind: 'best-chance' },
  { kind: 'least-mass', maxLoss: 900 },
  { kind: 'must-do' },
];

const varied = (number: number): Problem =>
  randomProblem({
    number,
    pieces: 5 + (number % 6),
    needs: 9,
    events: 6,
    massShare: 0.3 + 0.1 * (number % 5),
    rows: number % 4,
    forSale: number % 2 === 0 ? 0.4 : 0,
    bundles: number % 3 === 0 ? 2 : 0,
    enough: 0.25,
    must: number % 3,
    pins: 0.1,
    gain: number % 2 === 0 ? 6 : 300,
    coarse: number % 4 < 2,
  });

describe('reduce', () => {
  it('[M8] keeps the best loss, grams, pieces and cents of every aim, and lifts a choice that has them', () => {
    let shrunk = 0;
    for (let number = 1; number <= 250; number++) {
      const problem = varied(number);
      for (const aim of AIMS) {
        const raw = bruteForce(problem, aim);
        const reduced = reduce(problem, aim);
        shrunk += problem.pieces.length - reduced.problem.pieces.length;
        if (reduced.impossible) {
          expect(raw).toBeNull();
          continue;
        }
        const small = bruteForce(reduced.problem, aim);
        if (raw === null || small === null) {
          expect(small === null).toBe(raw === null);
          continue;
        }
        // What counts on the small problem may differ in ties only: the lifted choice is recounted on the raw one.
        const lifted = evaluate(problem, reduced.lift(small.choice));
        expect(lifted.faults).toEqual([]);
        const first = (of: typeof lifted) => criteria(aim, of).slice(0, aim.kind === 'must-do' ? 1 : 2);
        expect(first(lifted)).toEqual(first(raw.evaluation));
      }
    }
    expect(shrunk).toBeGreaterThan(1500);
  });

  it('[M8] the grams and loss it counts as settled are those of the lifted choice', () => {
    for (let number = 1; number <= 120; number++) {
      const problem = varied(number);
      const reduced = reduce(problem, { kind: 'best-chance' });
      const small = reduced.impossible ? null : bruteForce(reduced.problem, { kind: 'best-chance' });
      if (small === null) continue;
      const lifted = evaluate(problem, reduced.lift(small.choice));
      const counted = {
        loss: small.evaluation.loss,
        grams: small.evaluation.grams + reduced.settled.grams,
        pieces: small.choice.carried.reduce(
          (sum, p) => sum + (reduced.counts[p] ?? 0),
          reduced.settled.pieces,
        ),
        cents: small.choice.carried.reduce(
          (sum, p) => sum + (reduced.cents[p] ?? 0),
          small.evaluation.cents + reduced.settled.cents,
        ),
      };
      expect(lifted).toMatchObject(counted);
    }
    expect.hasAssertions();
  });
});

describe('reduce, one reduction at a time', () => {
  const way = (...pieces: number[]): Way => ({ pieces, needs: [] });
  const any = (...ways: Way[]): Need => ({ kind: 'any', ways });
  const problem = (
    grams: number[],
    needs: Need[],
    options: [number[], number][],
    more: Partial<Problem> = {},
  ): Problem => ({
    pieces: grams.map((g, p) => ({ id: `p${p}`, grams: g, millilitres: 0, cents: 0, owned: true })),
    bundles: [],
    needs,
    events: options.map(([needsOf, gain], e) => ({
      id: `e${e}`,
      loss: 100,
      options: [{ needs: needsOf, gain, label: '' }],
    })),
    limits: [
      {
        id: 'mass',
        limit: Math.floor(grams.reduce((a, b) => a + b) / 2),
        carried: grams.map((weight, piece) => ({ piece, weight })),
      },
    ],
    must: [],
    fixedLoss: 0,
    ...more,
  });
  const left = (of: Problem): string[] =>
    reduce(of, { kind: 'best-chance' }).problem.pieces.map(({ id }) => id);

  it('a heavier piece that a lighter one replaces everywhere stays home; of two equal ones the first is kept', () => {
    const two = problem(
      [10, 12, 12, 50],
      [any(way(0), way(1)), any(way(2), way(3))],
      [
        [[0], 5],
        [[0, 1], 9],
      ],
    );
    expect(left(two)).toEqual(['p0', 'p2']);
    const equal = problem(
      [12, 12, 13],
      [any(way(0), way(1)), any(way(2))],
      [
        [[0], 5],
        [[1], 9],
      ],
    );
    expect(left(equal)).toEqual(['p0', 'p2']);
  });

  it('[M3] two equal wrenches that one bolt needs at once are both kept', () => {
    const pair = problem(
      [8, 8, 16],
      [any(way(0), way(1)), any(way(0, 1)), any(way(2))],
      [
        [[0], 5],
        [[1], 9],
        [[2], 1],
      ],
    );
    expect(left(pair)).toEqual(['p0', 'p1', 'p2']);
  });

  it('[M3] of two equal wrenches the second is asked for only where both are needed', () => {
    // Any wrench, or the socket (2); and a pair: both wrenches, or one with the socket.
    const pair = problem(
      [8, 8, 7, 30],
      [any(way(0), way(1), way(2)), any(way(0, 1), way(0, 2), way(1, 2)), any(way(2)), any(way(3))],
      [
        [[0], 5],
        [[1], 9],
        [[2], 1],
        [[3], 1],
      ],
    );
    const { problem: small } = reduce(pair, { kind: 'best-chance' });
    const ways = small.needs.flatMap((need) => (need.kind === 'any' ? need.ways : []));
    const second = ways.filter(({ pieces }) => pieces.some((p) => small.pieces[p]?.id === 'p1'));
    expect(second).toEqual([]);
    // A heavier one that does more than the first keeps its own ways.
    const more = { ...pair, needs: [...pair.needs.slice(0, 3), any(way(3), way(1))] };
    expect(left(more)).toContain('p1');
  });

  it('[M3] of many equal wrenches, two of which are needed at once, two are left, with or without prices', () => {
    const grams = Array.from({ length: 14 }, () => 8);
    const of: Need = { kind: 'enough', units: 2, from: grams.map((_, piece) => ({ piece, units: 1 })) };
    const many = problem(
      grams,
      [of, any(...grams.map((_, p) => way(p)))],
      [
        [[0], 9],
        [[1], 5],
      ],
    );
    expect(left(many)).toEqual(['p0', 'p1']);
    const dearer = many.pieces.map((piece, p) => (p < 3 ? { ...piece, owned: false, cents: 100 } : piece));
    const bought = [0, 1, 2].map((piece) => ({ piece, weight: 100 }));
    const money = { id: 'money', limit: 200, carried: [], bought };
    expect(left({ ...many, pieces: dearer, limits: [...many.limits, money] })).toEqual(['p3', 'p4']);
    // A lighter third would be the first choice.
    const lighter = many.pieces.map((piece, p) => ({ ...piece, grams: p === 9 ? 7 : 8 }));
    expect(left({ ...many, pieces: lighter })).toEqual(['p0', 'p9']);
  });

  it('equal needs are one, and events on them add up', () => {
    const same = problem(
      [10, 20, 30],
      [any(way(0, 1)), any(way(1, 0)), any(way(2))],
      [
        [[0], 5],
        [[1], 9],
        [[2], 3],
      ],
    );
    const { problem: small } = reduce(same, { kind: 'best-chance' });
    expect(small.events.map(({ options }) => options.map(({ gain }) => gain))).toEqual([[14], [3]]);
  });

  it('the only way of a need that must be met is taken and weighed', () => {
    const must = problem([10, 20, 30], [any(way(1)), any(way(0), way(2))], [[[1], 5]], { must: [0] });
    const reduced = reduce(must, { kind: 'best-chance' });
    expect(reduced.settled).toMatchObject({ grams: 20, pieces: 1 });
    expect(reduced.lift({ carried: [], bought: [], bundles: [] }).carried).toEqual([1]);
  });

  it('a piece nothing asks for stays home, unless it takes weight off an axle', () => {
    const idle = problem(
      [10, 20, 30],
      [any(way(0)), any(way(1))],
      [
        [[0], 5],
        [[1], 4],
      ],
    );
    expect(left(idle)).toEqual(['p0', 'p1']);
    const ballast = {
      ...idle,
      limits: [
        ...idle.limits,
        {
          id: 'front',
          limit: 5,
          carried: [
            { piece: 0, weight: 8 },
            { piece: 1, weight: 8 },
            { piece: 2, weight: -12 },
          ],
        },
      ],
    };
    expect(left(ballast)).toContain('p2');
  });

  it('grades of one job become steps, so that equal steps of many jobs merge', () => {
    const graded: Problem = {
      ...problem([20, 10, 30], [any(way(0)), any(way(0), way(1)), any(way(2))], []),
      events: [
        {
          id: 'e',
          loss: 100,
          options: [
            { needs: [0], gain: 9, label: '' },
            { needs: [1], gain: 6, label: '' },
          ],
        },
        {
          id: 'f',
          loss: 100,
          options: [
            { needs: [0], gain: 5, label: '' },
            { needs: [1], gain: 5, label: '' },
          ],
        },
        { id: 'g', loss: 100, options: [{ needs: [2], gain: 1, label: '' }] },
      ],
    };
    const { problem: small } = reduce(graded, { kind: 'best-chance' });
    const gains = small.events.map(({ options }) => options.map(({ gain }) => gain));
    expect(gains.sort()).toEqual([[1], [11], [3]]);
  });

  it('a way through a smaller need loses the alternative that meets the need anyway', () => {
    // The bar (1) with the big wrench (0) or an extension (2); or the big wrench alone.
    const nested = problem(
      [30, 21, 5, 6],
      [
        any(way(0), way(2), way(3)),
        {
          kind: 'any',
          ways: [
            { pieces: [1], needs: [0] },
            { pieces: [0], needs: [] },
          ],
        },
        any(way(0)),
      ],
      [
        [[0], 5],
        [[1], 9],
        [[2], 3],
      ],
    );
    const { problem: small } = reduce(nested, { kind: 'best-chance' });
    const ways = small.needs.flatMap((need) => (need.kind === 'any' ? need.ways : []));
    const name = (p: number) => small.pieces[p]?.id ?? '';
    const withBar = ways.filter(({ pieces }) => pieces.some((p) => name(p) === 'p1'));
    expect(withBar.map(({ pieces }) => pieces.map(name).sort())).toEqual([['p1', 'p2']]);
  });
});

describe('Implications', () => {
  it('[M8] whatever it says is implied holds in every choice', () => {
    let said = 0;
    for (let number = 1; number <= 60; number++) {
      const problem = randomProblem({ number, pieces: 7, needs: 12, events: 1, massShare: 1, enough: 0.3 });
      const implications = new Implications(7, needsAsAtoms(problem));
      const compiled = compile(problem);
      const states = Array.from({ length: 1 << 7 }, (_, mask) => {
        const state = new KitState(compiled);
        for (let p = 0; p < 7; p++) if ((mask >> p) & 1) state.carry(p);
        return state;
      });
      for (let a = 0; a < 12; a++) {
        for (let b = 0; b < 12; b++) {
          if (a === b || !implications.implies(7 + a, 7 + b)) continue;
          said++;
          expect(states.every((state) => !state.needMet(a) || state.needMet(b))).toBe(true);
        }
      }
    }
    expect(said).toBeGreaterThan(300);
  });
});
