import { boundL2, countBags } from '@waymend/core/stowing/count-bags';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { dataText } from '../read-data.ts';
import { drawer } from './random-stowage.ts';

/** First-fit decreasing on u120_00 to u120_19, recomputed from the instances alone. */
const FIRST_FIT = [49, 49, 47, 50, 50, 49, 49, 50, 51, 47, 52, 50, 49, 49, 50, 49, 52, 53, 50, 50];

const solver = await createHighsSolver();

interface Instance {
  readonly name: string;
  readonly capacity: number;
  readonly best: number;
  readonly sizes: readonly number[];
}

function instances(): readonly Instance[] {
  const words = dataText('binpack1.txt').trim().split(/\s+/);
  const count = Number(words.shift());
  return Array.from({ length: count }, () => {
    const name = words.shift() ?? '';
    const [capacity = 0, items = 0, best = 0] = words.splice(0, 3).map(Number);
    return { name, capacity, best, sizes: words.splice(0, items).map(Number) };
  });
}

// OR-Library bin packing, problems u120_00 to u120_19 (JORS 41(11), 1990, 1069-1072): best known values stand in the file.
describe('OR-Library binpack1 through the counting of equal bags', () => {
  const all = instances();
  const counted = all.map((one) => ({ one, found: countBags(one.sizes, one.capacity, solver) }));

  it('has the twenty instances of the file', () => {
    expect(all.map(({ name }) => name)).toEqual(
      Array.from({ length: 20 }, (_, n) => `u120_${String(n).padStart(2, '0')}`),
    );
    expect(all.every(({ sizes }) => sizes.length === 120)).toBe(true);
  });

  it.each(counted.map(({ one, found }, n) => [one.name, one, found, n] as const))(
    '[M14] %s: the best known number, proven, and never more than first-fit decreasing',
    (_, one, found, n) => {
      expect(found?.firstFit).toBe(FIRST_FIT[n]);
      expect(found?.count).toBe(one.best);
      expect(found?.proven).toBe(true);
      expect(found?.bound).toBe(one.best);
      // From the file alone: every size once, no bag too full.
      const bags = found?.bags ?? [];
      expect(bags.flat().sort((a, b) => a - b)).toEqual([...one.sizes.keys()]);
      for (const bag of bags)
        expect(bag.reduce((sum, i) => sum + (one.sizes[i] ?? 0), 0)).toBeLessThanOrEqual(one.capacity);
    },
  );
});

/** Every way of putting sizes into bags, by recursion: for eight sizes or fewer. */
function fewest(sizes: readonly number[], capacity: number): number {
  let best = sizes.length;
  const bags: number[] = [];
  const put = (n: number): void => {
    if (bags.length >= best) return;
    const size = sizes[n];
    if (size === undefined) {
      best = bags.length;
      return;
    }
    for (const [b, held] of bags.entries()) {
      if (held + size > capacity) continue;
      bags[b] = held + size;
      put(n + 1);
      bags[b] = held;
    }
    bags.push(size);
    put(n + 1);
    bags.pop();
  };
  put(0);
  return best;
}

describe('counting equal bags', () => {
  it('[M14] agrees with trying every packing, and L2 is never above it', () => {
    const draw = drawer(11);
    for (let round = 0; round < 300; round++) {
      const capacity = 20 + Math.floor(draw() * 60);
      const sizes = Array.from(
        { length: 1 + Math.floor(draw() * 8) },
        () => 1 + Math.floor(draw() * capacity),
      );
      const truth = fewest(sizes, capacity);
      expect(countBags(sizes, capacity)).toMatchObject({ count: truth, proven: true });
      expect(boundL2(sizes, capacity)).toBeLessThanOrEqual(truth);
    }
  });

  it('[M14] a size above the capacity, a negative or a broken one is not counted', () => {
    expect(countBags([5, 11], 10)).toBeNull();
    expect(countBags([5, -1], 10)).toBeNull();
    expect(countBags([2.5], 10)).toBeNull();
    expect(countBags([], 10)).toMatchObject({ count: 0, proven: true });
  });
});
