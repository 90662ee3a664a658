import { grams, millilitres } from '@waymend/core/quantity/units';
import { firstFit } from '@waymend/core/stowing/first-fit';
import { layOut } from '@waymend/core/stowing/lay-out';
import { AT } from '@waymend/core/stowing/piece-costs';
import { stow } from '@waymend/core/stowing/stow';
import type { StowProblem } from '@waymend/core/stowing/stow-problem';
import { StowState, compareScores } from '@waymend/core/stowing/stow-state';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { bag, randomStowage, slots } from './random-stowage.ts';

const solver = await createHighsSolver();

/** A few tight bags that stay where they are, so that every stowage can be tried. */
function small(start: number, pieces: number): StowProblem {
  const bags = [
    bag('grab', 'pouch', {
      firstGrab: true,
      fixedIn: 'cab',
      millilitres: millilitres(300 + 70 * (start % 5)),
    }),
    bag('roll', 'roll', { fixedIn: 'drawer', pockets: slots('roll', [40, 55], 200) }),
    bag('box', 'box', {
      fixedIn: 'canopy',
      spillproof: start % 2 === 0,
      millilitres: millilitres(600),
      limit: grams(1_500),
    }),
  ];
  return randomStowage(start, pieces, bags);
}

/** The same with most things in one bag or another now, a slot named for some. */
function lying(problem: StowProblem): StowProblem {
  const bags = ['grab', 'roll', 'box'];
  return {
    ...problem,
    pieces: problem.pieces.map((one, p) =>
      p === 4 ? one : { ...one, now: { bag: bags[p % 3] ?? '', pocket: p % 3 === 1 ? 'roll-2' : null } },
    ),
  };
}

/** Best score of all stowages within the limits, by trying every place for every piece. */
function bestOfAll(problem: StowProblem): Float64Array {
  const layout = layOut(problem);
  const state = new StowState(layout);
  let best = state.score.slice();
  const lay = (p: number): void => {
    if (p === problem.pieces.length) {
      if (compareScores(state.score, best) < 0) best = state.score.slice();
      return;
    }
    lay(p + 1);
    for (const s of layout.allowed[p] ?? []) {
      if (!state.takesPiece(p, s)) continue;
      state.put(p, s);
      lay(p + 1);
      state.put(p, -1);
    }
  };
  lay(0);
  return best;
}

describe('small stowages against every stowage there is', () => {
  it.each(Array.from({ length: 24 }, (_, n) => n + 1))(
    '[M14] case %d: the best at every level, to proof',
    (n) => {
      const problem = small(n, 5);
      const outcome = stow(problem, solver, { closeEnough: 0 });
      expect(outcome.levels.map(({ value }) => value)).toEqual([...bestOfAll(problem)]);
      expect(outcome.status).toBe('proven');
    },
  );
});

describe('small stowages of things that lie somewhere now', () => {
  it.each(Array.from({ length: 12 }, (_, n) => n + 31))(
    '[M14] case %d: the best at every level, the fewest moved among them, to proof',
    (n) => {
      const problem = lying(small(n, 5));
      const outcome = stow(problem, solver, { closeEnough: 0 });
      expect(outcome.levels.map(({ value }) => value)).toEqual([...bestOfAll(problem)]);
      expect(outcome.status).toBe('proven');
    },
  );

  it('some of these cases move things and some leave them', () => {
    const moved = Array.from({ length: 12 }, (_, n) => bestOfAll(lying(small(n + 31, 5)))[AT.moved] ?? 0);
    expect(Math.min(...moved)).toBeLessThan(Math.max(...moved));
  });
});

describe('larger ones', () => {
  it.each([3, 5, 8])(
    '[M14] case %d: never worse than first-fit decreasing, and bounds below what is found',
    (n) => {
      const problem = randomStowage(n, 60);
      const started = performance.now();
      const outcome = stow(problem, solver, {
        clock: () => (performance.now() - started) / 1000,
        timeLimit: 1.5,
      });
      const floor = firstFit(layOut(problem)).score;
      expect(outcome.levels.map(({ firstFit: of }) => of)).toEqual([...floor]);
      expect(
        compareScores(
          outcome.levels.map(({ value }) => value),
          floor,
        ),
      ).toBeLessThan(0);
      for (const { value, bound } of outcome.levels) expect(bound).toBeLessThanOrEqual(value);
    },
  );
});

describe('the state', () => {
  it('[M14] every step is undone exactly by its opposite', () => {
    const problem = randomStowage(7, 40);
    const state = firstFit(layOut(problem));
    const before = state.snapshot();
    for (let p = 0; p < problem.pieces.length; p++)
      for (const s of (state.layout.allowed[p] ?? []).slice(0, 6)) {
        const now = state.spotOf[p] ?? -1;
        state.put(p, s);
        state.put(p, now);
      }
    for (const b of problem.bags.keys()) {
      const now = state.berthOf[b] ?? -1;
      for (const h of state.layout.homes[b] ?? []) state.setBerth(b, h);
      state.setBerth(b, now);
    }
    expect([...state.score]).toEqual([...before.score]);
    const anew = new StowState(state.layout);
    anew.restore(state);
    expect([...anew.score]).toEqual([...before.score]);
  });
});
