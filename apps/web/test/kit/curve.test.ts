import { describe, expect, it } from 'vitest';
import { balloonGroups, nearestGroups } from '../../src/places/kit/curve/balloons.ts';
import { chanceScale } from '../../src/places/kit/curve/chance-scale.ts';
import { massScale, niceStep } from '../../src/places/kit/curve/mass-scale.ts';
import { exchange, nearestStep, stepsOf } from '../../src/places/kit/curve/steps.ts';
import type { CurvePoint } from '../../src/worker/protocol.ts';

const point = (grams: number, unaided: number, belongings: readonly string[] = []): CurvePoint => ({
  grams,
  unaided,
  belongings,
  pieces: belongings.length,
  proven: true,
  gap: 0,
});

describe('the steps of the curve', () => {
  it('[M9] puts the planned kit among the points, light to heavy', () => {
    const steps = stepsOf([point(9000, 0.9), point(3000, 0.6)], point(5000, 0.8));
    expect(steps.map(({ grams, kit }) => [grams, kit])).toEqual([
      [3000, false],
      [5000, true],
      [9000, false],
    ]);
  });

  it('[M9] leaves out a heavier kit that is no better at its real mass', () => {
    const steps = stepsOf([point(3000, 0.6), point(6000, 0.8), point(7000, 0.79)], point(5000, 0.8));
    expect(steps.map(({ grams }) => grams)).toEqual([3000, 5000]);
  });

  it('[M9] never leaves out the planned kit, whatever it is aimed at', () => {
    const steps = stepsOf([point(3000, 0.9), point(4000, 0.95), point(6000, 0.99)], point(5000, 0.7));
    expect(steps.map(({ grams, kit }) => [grams, kit])).toEqual([
      [5000, true],
      [6000, false],
    ]);
  });

  it('does not show the planned kit twice', () => {
    expect(stepsOf([point(5000, 0.8)], point(5000, 0.8))).toHaveLength(1);
  });

  it('finds the step nearest to a place', () => {
    const steps = stepsOf([point(1000, 0.1), point(2000, 0.2)], point(4000, 0.4));
    expect([-50, 1400, 1600, 3100, 99_000].map((g) => nearestStep(steps, g))).toEqual([0, 0, 1, 2, 2]);
  });

  it('says what joins and what stays', () => {
    expect(exchange({ belongings: ['a', 'b'] }, { belongings: ['b', 'c'] })).toEqual({
      joins: ['c'],
      leaves: ['a'],
    });
  });
});

describe('the scale of mass', () => {
  const range = { floor: 5000, heaviest: 60_000, full: 70_000, everything: 80_000 };

  it('is one true scale when nothing is far from anything', () => {
    const scale = massScale(range, 100, 900, 1000);
    expect(scale.breakBefore).toBeNull();
    expect(scale.breakAfter).toBeNull();
    expect(scale.x(0)).toBeCloseTo(100);
    expect(scale.x(80_000)).toBeCloseTo(900);
    expect(scale.x(40_000)).toBeCloseTo(500);
  });

  it('breaks before a heavy floor and past the last limit, and only there', () => {
    const scale = massScale(
      { floor: 49_000, heaviest: 138_000, full: 150_000, everything: 232_000 },
      100,
      900,
      1000,
    );
    expect(scale.breakBefore).not.toBeNull();
    expect(scale.breakAfter).not.toBeNull();
    expect(scale.x(0)).toBeCloseTo(100);
    expect(scale.x(232_000)).toBeCloseTo(900);
    const kilogram = scale.x(61_000) - scale.x(60_000);
    expect(scale.x(150_000) - scale.x(50_000)).toBeCloseTo(100 * kilogram, 6);
  });

  it('reads back the mass of a place', () => {
    const scale = massScale(
      { floor: 49_000, heaviest: 138_000, full: null, everything: 232_000 },
      62,
      384,
      1000,
    );
    for (const grams of [49_000, 75_000, 138_000]) expect(scale.grams(scale.x(grams))).toBeCloseTo(grams, 3);
  });

  it('never turns back', () => {
    const scale = massScale(
      { floor: 49_000, heaviest: 138_000, full: 150_000, everything: 232_000 },
      62,
      384,
      453.59237,
    );
    let last = -1;
    for (let g = 0; g <= 232_000; g += 1000) {
      expect(scale.x(g)).toBeGreaterThan(last);
      last = scale.x(g);
    }
  });

  it('stands on its feet with nothing owned', () => {
    const scale = massScale({ floor: 0, heaviest: 0, full: null, everything: 0 }, 62, 384, 1000);
    expect(Number.isFinite(scale.x(0))).toBe(true);
    expect(scale.ticks.length).toBeLessThan(60);
  });

  it('steps by 1, 2 or 5', () => {
    expect([0.9, 1.1, 3, 7, 12, 45].map(niceStep)).toEqual([1, 2, 5, 10, 20, 50]);
  });
});

describe('the scale of chance', () => {
  it('is true: half the chance is half as far from none', () => {
    const { y } = chanceScale(0.6, 20, 330);
    expect(y(0)).toBe(20);
    expect(y(0.4) - 20).toBeCloseTo(2 * (y(0.2) - 20), 9);
  });

  it('keeps its words apart, whatever the worst chance is', () => {
    for (const worst of [0.001, 0.02, 0.15, 0.6, 1]) {
      const { ticks } = chanceScale(worst, 20, 330);
      expect(ticks.length).toBeGreaterThan(2);
      ticks.slice(1).forEach((tick, i) => expect((ticks[i]?.y ?? 0) - tick.y).toBeGreaterThanOrEqual(22));
    }
  });
});

describe('balloons', () => {
  const steps = stepsOf(
    [point(1000, 0.1, ['a']), point(2000, 0.2, ['a', 'b']), point(3000, 0.3, ['a', 'c'])],
    point(4000, 0.4, ['a', 'b', 'c', 'd']),
  );

  it('tie a row to the step from which on it always comes', () => {
    const groups = balloonGroups(steps, ['d', 'c', 'b', 'a'], 9);
    expect(groups.map(({ step, numbers }) => [step, [...numbers]])).toEqual([
      [3, [1, 3]],
      [2, [2]],
      [0, [4]],
    ]);
  });

  it('hang at most three to a riser and say how many more', () => {
    const one = stepsOf([], point(4000, 0.4, ['a', 'b', 'c', 'd', 'e']));
    expect(balloonGroups(one, ['a', 'b', 'c', 'd', 'e'], 6)).toEqual([
      { step: 0, numbers: [1, 2, 3], more: 2 },
    ]);
  });

  it('leave out what does not come', () => {
    expect(balloonGroups(steps, ['x'], 6)).toEqual([]);
  });
});

describe('balloons where there is little room', () => {
  const group = (step: number, numbers: readonly number[], more = 0) => ({ step, numbers, more });

  it('are those of the steps nearest to the handle, and the rest is counted', () => {
    const groups = [group(9, [1, 2, 3], 2), group(6, [4]), group(5, [5, 6]), group(1, [7])];
    expect(nearestGroups(groups, 5, 2, 2)).toEqual([group(6, [4]), group(5, [5, 6])]);
    expect(nearestGroups(groups, 9, 1, 2)).toEqual([group(9, [1, 2], 3)]);
    expect(nearestGroups(groups, 0, 9, 1).map(({ step }) => step)).toEqual([9, 6, 5, 1]);
    expect(nearestGroups([], 3, 2, 2)).toEqual([]);
  });
});
