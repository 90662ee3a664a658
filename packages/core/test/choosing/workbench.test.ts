import { describe, expect, it } from 'vitest';
import { stream } from '../../src/choosing/random-problem.ts';
import { unreduced } from '../../src/choosing/reduce/reduce.ts';
import { sortedDistinct } from '../../src/choosing/sorted.ts';
import { Workbench } from '../../src/choosing/workbench.ts';
import { mixedProblem } from './mixed-problem.ts';

describe('prices of needs', () => {
  it('[M8] pricing only what a change touched gives the prices of pricing everything', () => {
    let changes = 0;
    for (let number = 1; number <= 40; number++) {
      const reduced = unreduced(mixedProblem(number));
      const kept = new Workbench(reduced);
      const next = stream(number);
      const price = Float64Array.from(reduced.problem.pieces, () => Math.floor(next() * 50));
      kept.priceNeeds(price);
      for (let step = 0; step < 25; step++) {
        const pieces = [0, 1, 2].map(() => Math.floor(next() * kept.pieceCount));
        const before = [...kept.optionPrice];
        for (const p of pieces) {
          if (kept.state.carried[p] === 1) kept.leave(p);
          else kept.carry(p);
        }
        kept.repriceNeeds(price, pieces);
        const fresh = new Workbench(reduced);
        for (let p = 0; p < kept.pieceCount; p++) if (kept.state.carried[p] === 1) fresh.carry(p);
        fresh.priceNeeds(price);
        expect([...kept.needPrice]).toEqual([...fresh.needPrice]);
        expect([...kept.needWay]).toEqual([...fresh.needWay]);
        expect([...kept.optionPrice]).toEqual([...fresh.optionPrice]);
        if (before.some((value, o) => value !== kept.optionPrice[o])) changes++;
      }
    }
    // Otherwise nothing was put to the test.
    expect(changes).toBeGreaterThan(200);
  });
});

describe('sorted lists', () => {
  it('[M8] short and long lists come out ascending and without doubles', () => {
    const next = stream(7);
    for (const length of [0, 1, 2, 5, 31, 32, 33, 80]) {
      const list = Array.from({ length }, () => Math.floor(next() * 40));
      const plainly = [...new Set(list)].sort((a, b) => a - b);
      expect(sortedDistinct([...list])).toEqual(plainly);
    }
  });
});
