import { describe, expect, it } from 'vitest';
import { compile } from '../../src/choosing/compile.ts';
import { evaluate } from '../../src/choosing/evaluate.ts';
import { KitState } from '../../src/choosing/kit-state.ts';
import type { Problem } from '../../src/choosing/problem.ts';
import { stream } from '../../src/choosing/random-problem.ts';
import { mixedProblem } from './mixed-problem.ts';

/** The definition of problem.ts read literally, by recursion, sharing nothing with KitState. */
function plainly(problem: Problem, carried: ReadonlySet<number>): { loss: number; met: boolean[] } {
  const met = (n: number): boolean => {
    const need = problem.needs[n];
    if (need === undefined) throw new Error(`need ${n}`);
    if (need.kind === 'enough') {
      const units = need.from.reduce((sum, { piece, units }) => sum + (carried.has(piece) ? units : 0), 0);
      return units >= need.units;
    }
    return need.ways.some((way) => way.pieces.every((p) => carried.has(p)) && way.needs.every(met));
  };
  const losses = problem.events.map(({ loss, options }) => {
    const gains = options.filter(({ needs }) => needs.every(met)).map(({ gain }) => gain);
    return loss - Math.max(0, ...gains);
  });
  return {
    loss: losses.reduce((sum, loss) => sum + loss, problem.fixedLoss),
    met: problem.needs.map((_, n) => met(n)),
  };
}

function kitStateOf(problem: Problem, carried: readonly number[] = []): KitState {
  const state = new KitState(compile(problem));
  for (const p of carried) state.carry(p);
  return state;
}

describe('KitState', () => {
  it('[M10] after every carry and leave it says what the definition says', () => {
    for (let number = 1; number <= 40; number++) {
      const problem = mixedProblem(number);
      const state = new KitState(compile(problem));
      const carried = new Set<number>();
      const next = stream(number);
      for (let step = 0; step < 60; step++) {
        const p = Math.floor(next() * problem.pieces.length);
        if (carried.delete(p)) state.leave(p);
        else {
          carried.add(p);
          state.carry(p);
        }
        const truth = plainly(problem, carried);
        expect(state.loss).toBe(truth.loss);
        expect(problem.needs.map((_, n) => state.needMet(n))).toEqual(truth.met);
        expect(state.mustOpen).toBe(problem.must.filter((n) => !truth.met[n]).length);
        expect(state.pieces).toBe(carried.size);
        expect(state.grams).toBe([...carried].reduce((sum, q) => sum + (problem.pieces[q]?.grams ?? 0), 0));
      }
    }
  });

  it('[M10] asking what a piece is worth leaves the state as it was', () => {
    const problem = mixedProblem(7);
    const state = kitStateOf(problem, [0, 1, 2, 3, 4, 5, 6]);
    const before = { loss: state.loss, grams: state.grams, mustOpen: state.mustOpen };
    for (let p = 0; p < problem.pieces.length; p++) {
      const without = new Set([0, 1, 2, 3, 4, 5, 6].filter((q) => q !== p));
      if (p <= 6) expect(state.without(p).loss).toBe(plainly(problem, without).loss);
      else expect(state.without(p).loss).toBe(state.loss);
    }
    expect({ loss: state.loss, grams: state.grams, mustOpen: state.mustOpen }).toEqual(before);
  });

  it('a need asked for twice in one way, and a way with nothing in it, count once and always', () => {
    const problem: Problem = {
      pieces: [{ id: 'a', grams: 1, millilitres: 0, cents: 0, owned: true }],
      bundles: [],
      needs: [
        { kind: 'any', ways: [{ pieces: [], needs: [] }] },
        { kind: 'any', ways: [{ pieces: [0, 0], needs: [0, 0] }] },
        { kind: 'any', ways: [] },
        { kind: 'enough', units: 0, from: [] },
      ],
      events: [
        { id: 'e', loss: 10, options: [{ needs: [1, 1, 3], gain: 7, label: '' }] },
        { id: 'f', loss: 5, options: [{ needs: [], gain: 2, label: '' }] },
      ],
      limits: [],
      must: [],
      fixedLoss: 100,
    };
    const state = kitStateOf(problem);
    expect(state.loss).toBe(113);
    state.carry(0);
    expect(state.loss).toBe(106);
    expect([0, 1, 2, 3].map((n) => state.needMet(n))).toEqual([true, true, false, true]);
  });
});

describe('evaluate', () => {
  const problem: Problem = {
    pieces: [
      { id: 'own', grams: 100, millilitres: 10, cents: 0, owned: true },
      { id: 'single', grams: 50, millilitres: 20, cents: 900, owned: false },
      { id: 'in-set', grams: 30, millilitres: 5, cents: null, owned: false, bundles: [0] },
      { id: 'boxed', grams: 20, millilitres: 5, cents: 0, owned: true, bundles: [1] },
      { id: 'boxed-too', grams: 25, millilitres: 5, cents: 0, owned: true, bundles: [1] },
      { id: 'never', grams: 1, millilitres: 1, cents: 0, owned: true, pin: 'never' },
    ],
    bundles: [
      { id: 'set', cents: 2500, caseGrams: 400, caseMillilitres: 70, carry: 'loose', owned: false },
      { id: 'box', cents: 0, caseGrams: 300, caseMillilitres: 60, carry: 'whole', owned: true },
    ],
    needs: [{ kind: 'any', ways: [{ pieces: [0], needs: [] }] }],
    events: [
      {
        id: 'e',
        loss: 10,
        options: [
          { needs: [0], gain: 4, label: 'a' },
          { needs: [0], gain: 4, label: 'b' },
        ],
      },
    ],
    limits: [
      {
        id: 'mass',
        limit: 475,
        carried: [0, 1, 2, 3, 4].map((piece) => ({ piece, weight: [100, 50, 30, 20, 25][piece] ?? 0 })),
        bundles: [{ bundle: 1, weight: 300 }],
      },
      {
        id: 'money',
        limit: 3000,
        carried: [],
        bought: [{ piece: 1, weight: 900 }],
        bundles: [{ bundle: 0, weight: 2500 }],
      },
    ],
    must: [0],
    fixedLoss: 0,
  };

  it('counts a case only where the set is carried whole, and a price only where something is bought', () => {
    const all = evaluate(problem, { carried: [0, 2, 3, 4], bought: [], bundles: [0, 1] });
    expect(all).toMatchObject({
      feasible: true,
      loss: 6,
      grams: 475,
      millilitres: 85,
      cents: 2500,
      pieces: 4,
    });
    expect(all.bestOption).toEqual(Int32Array.of(0));
    expect(all.limits).toEqual([
      { id: 'mass', used: 475, limit: 475 },
      { id: 'money', used: 2500, limit: 3000 },
    ]);
  });

  it.each([
    ['one gram over', { carried: [0, 1, 2, 3, 4], bought: [1], bundles: [0, 1] }, 'over-limit'],
    ['the need of must open', { carried: [], bought: [], bundles: [] }, 'must-open'],
    ['a piece pinned never', { carried: [0, 5], bought: [], bundles: [] }, 'pin'],
    ['neither bought nor owned', { carried: [0, 1], bought: [], bundles: [] }, 'not-had'],
    ['out of its box', { carried: [0, 3], bought: [], bundles: [] }, 'not-had'],
    ['bought though only sold in a set', { carried: [0, 2], bought: [2], bundles: [] }, 'not-sold-singly'],
    ['bought though owned', { carried: [0, 3], bought: [3], bundles: [] }, 'not-sold-singly'],
    ['a whole set without a member', { carried: [0, 3], bought: [], bundles: [1] }, 'torn-set'],
  ])('finds the fault: %s', (_, choice, fault) => {
    const { feasible, faults } = evaluate(problem, choice);
    expect(feasible).toBe(false);
    expect(faults.map(({ kind }) => kind)).toContain(fault);
  });
});
