import { describe, expect, it } from 'vitest';
import { cents, grams, millilitres } from '../../src/quantity/units.ts';
import { buildProblem } from '../../src/repairing/build-problem.ts';
import type { FunctionNeed, Scene, ScenePiece } from '../../src/repairing/scene.ts';
import { built, does, job, metWith, piece, scene } from './hand-made.ts';

const floor = (...fns: readonly string[]): readonly FunctionNeed[] => fns.map((fn) => ({ fn }));
const light = (change: Partial<ScenePiece> = {}) => piece('lamp', [does('light')], change);
const forSale = (price: number): Partial<ScenePiece> => ({ owned: false, cents: cents(price) });
const budget = (money: number): Partial<Scene> => ({ limits: { ...scene().limits, cents: cents(money) } });

describe('[M7] floor', () => {
  const state = (lamp: Partial<ScenePiece>, more: Partial<Scene> = {}) => {
    const answer = built(scene({ floor: floor('light'), pieces: [light(lamp)], ...more }));
    return { must: answer.problem.must.length, unmet: answer.unmetFloor.map((need) => need.fn), answer };
  };

  it('[M7] is a constraint when something owned gives it, and reported when nothing does', () => {
    const { must, unmet, answer } = state({});
    expect([must, unmet]).toEqual([1, []]);
    const [need = -1] = answer.problem.must;
    expect(answer.floor.get(need)).toEqual({ fn: 'light' });
    expect(metWith(answer.problem, new Set([0]))[need]).toBe(true);
    expect(metWith(answer.problem, new Set())[need]).toBe(false);
    const bare = built(scene({ floor: floor('light', 'fire'), pieces: [light()] }));
    expect(bare.unmetFloor).toEqual([{ fn: 'fire' }]);
    expect(bare.problem.must).toHaveLength(1);
  });

  it('[M7] counts what the budget pays for, alone or in a set, and nothing pinned to stay home', () => {
    expect(state(forSale(500), budget(499)).unmet).toEqual(['light']);
    expect(state(forSale(500), budget(500)).unmet).toEqual([]);
    expect(state({ pin: 'never' }).unmet).toEqual(['light']);
    const inSet = (price: number) =>
      state(
        { owned: false, cents: null, bundles: ['box'] },
        {
          ...budget(900),
          bundles: [
            {
              id: 'box',
              cents: cents(price),
              caseGrams: grams(300),
              caseMillilitres: millilitres(900),
              carry: 'loose',
              owned: false,
            },
          ],
        },
      ).unmet;
    expect(inSet(900)).toEqual([]);
    expect(inSet(901)).toEqual(['light']);
  });

  it('[M7] is never met by a last resort where people could be hurt', () => {
    const poor = piece('p', [
      does('eyes', { grade: 'last-resort' }),
      does('light', { grade: 'last-resort' }),
    ]);
    const answer = built(scene({ floor: [{ fn: 'eyes', safety: true }, { fn: 'light' }], pieces: [poor] }));
    expect(answer.unmetFloor.map((need) => need.fn)).toEqual(['eyes']);
  });

  it('[M7] pins go through to the choice', () => {
    const pieces = [piece('a', [], { pin: 'always' }), piece('b', [], { pin: 'never' }), piece('c', [])];
    expect(built(scene({ pieces })).problem.pieces.map((p) => p.pin)).toEqual(['always', 'never', undefined]);
  });
});

describe('[M6] jobs that must be possible', () => {
  const grip = [{ kind: 'function' as const, fn: 'grip' }];
  const uses = [{ of: 'P-X', units: 2 }];
  const base: Partial<Scene> = {
    jobs: [job('J@front', { job: 'J', needs: grip, uses }), job('J@rear', { job: 'J', needs: grip })],
    mustDo: ['J'],
  };
  const pieces = [
    piece('g', [does('grip', { grade: 'last-resort' })]),
    piece('x', [], { stock: [{ of: 'P-X', units: 1 }] }),
    piece('y', [], { stock: [{ of: 'P-X', units: 1 }] }),
  ];

  it('[M6] ask for tools at any grade and for stock for once, in every position', () => {
    const { problem } = built(scene({ ...base, pieces }));
    const open = (...kit: readonly number[]) => {
      const met = metWith(problem, new Set(kit));
      return problem.must.filter((need) => met[need] !== true).length;
    };
    expect(open()).toBeGreaterThan(0);
    expect(open(0, 1)).toBe(1);
    expect(open(0, 1, 2)).toBe(0);
  });

  it('[M6] do not ask for the expedients of the job as well', () => {
    const makeshift = job('J/tape', { job: 'J', expedient: true, needs: [{ kind: 'function', fn: 'seal' }] });
    const jobs = [job('J', { needs: grip }), makeshift];
    const { problem } = built(scene({ jobs, mustDo: ['J'], pieces }));
    const met = metWith(problem, new Set([0]));
    expect(problem.must.map((need) => met[need])).toEqual([true]);
  });

  it('[M6] that no tool makes possible become a need that cannot be met and says so', () => {
    const { problem, needs } = built(scene({ ...base, pieces: pieces.slice(1) }));
    const hopeless = problem.must.filter((n) => {
      const need = problem.needs[n];
      return need?.kind === 'any' && need.ways.length === 0;
    });
    expect(hopeless.flatMap((n) => needs[n]?.words ?? [])).toContain('tools for: Job J@front');
  });

  it('[M6] that the people cannot do, or the vehicle does not have, are refused', () => {
    const refusal = (change: Partial<Scene>) => {
      const answer = buildProblem(scene({ ...base, pieces, ...change }));
      return answer.ok ? null : answer.error.id;
    };
    expect(refusal({})).toBeNull();
    expect(refusal({ mustDo: ['K'] })).toBe('must-do-unknown');
    expect(refusal({ jobs: [job('J', { skill: 5, bestSkill: 4 })] })).toBe('must-do-skill');
    expect(refusal({ jobs: [job('J', { people: 3 })] })).toBe('must-do-people');
  });
});

describe('[M6] limits', () => {
  const owned = piece('a', [], { grams: grams(400), millilitres: millilitres(30), berth: 'tail' });
  const sold = piece('b', [], { ...forSale(700), grams: grams(250) });
  const boxed = piece('c', [], { owned: false, cents: null, bundles: ['box'] });
  const { problem } = built(
    scene({
      pieces: [owned, sold, boxed],
      bundles: [
        {
          id: 'box',
          cents: cents(3000),
          caseGrams: grams(900),
          caseMillilitres: millilitres(4000),
          carry: 'whole',
          owned: false,
        },
      ],
      limits: {
        grams: grams(5000),
        millilitres: millilitres(9000),
        cents: cents(4000),
        berths: [{ id: 'tail', grams: grams(80_000) }],
        loads: [
          { id: 'rear', grams: 60_000, factor: { tail: 1.266234 }, elsewhere: 0.9 },
          { id: 'front', grams: -10, factor: { tail: -0.266234 }, elsewhere: 0.1 },
        ],
      },
    }),
  );
  const row = (id: string) => {
    const found = problem.limits.find((r) => r.id === id);
    if (found === undefined) throw new Error(`no row ${id}`);
    return found;
  };
  const weights = (id: string) => row(id).carried.map((w) => [w.piece, w.weight]);

  it('[M6] mass, volume and money in whole grams, millilitres and cents', () => {
    expect(row('mass').limit).toBe(5000);
    expect(weights('mass')).toEqual([
      [0, 400],
      [1, 250],
      [2, 100],
    ]);
    expect(row('mass').bundles).toEqual([{ bundle: 0, weight: 900 }]);
    expect(weights('volume')).toEqual([
      [0, 30],
      [1, 50],
      [2, 50],
    ]);
    expect(row('volume').bundles).toEqual([{ bundle: 0, weight: 4000 }]);
    expect(row('money')).toEqual({
      id: 'money',
      limit: 4000,
      carried: [],
      bought: [{ piece: 1, weight: 700 }],
      bundles: [{ bundle: 0, weight: 3000 }],
    });
  });

  it('[M13] berths and axles: by where each piece rides, rounded towards the safe side', () => {
    expect(weights('berth tail')).toEqual([[0, 400]]);
    // 400 g x 1.266234 = 506.49 g on the rear axle, and 106.49 g off the front one.
    expect(weights('load rear')).toEqual([
      [0, 507],
      [1, 225],
      [2, 90],
    ]);
    expect(weights('load front')).toEqual([
      [0, -106],
      [1, 25],
      [2, 10],
    ]);
    expect(row('load front').limit).toBe(-10);
    expect(row('load rear').bundles).toEqual([{ bundle: 0, weight: 810 }]);
  });

  it('[M13] a millionth of a gram over is a gram, a whole number is itself however it looks in binary', () => {
    const weigh = (g: number, elsewhere: number) => {
      const { problem: one } = built(
        scene({
          pieces: [piece('p', [], { grams: grams(g) })],
          limits: {
            grams: null,
            millilitres: null,
            cents: cents(0),
            berths: [],
            loads: [{ id: 'rear', grams: 1, factor: {}, elsewhere }],
          },
        }),
      );
      return one.limits.find((r) => r.id === 'load rear')?.carried[0]?.weight;
    };
    expect(weigh(1, 1.000001)).toBe(2);
    expect(weigh(1_000_000, 1.000001)).toBe(1_000_001);
    expect(weigh(10, 0.7)).toBe(7);
    expect(weigh(1000, 1.1)).toBe(1100);
    expect(weigh(3, 1 / 3)).toBe(1);
    expect(weigh(1, -0.5)).toBeUndefined();
    expect(weigh(3, -0.5)).toBe(-1);
  });

  it('[M6] no row where there is no limit, but money always', () => {
    expect(built(scene()).problem.limits.map((r) => r.id)).toEqual(['money']);
  });
});
