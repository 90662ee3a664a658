import { describe, expect, test } from 'vitest';
import { kindDrawer } from '@waymend/core/simulating/draw-kind';
import { wilson } from '@waymend/core/simulating/wilson';

describe('[M12] Wilson interval', () => {
  test('[M12] 4 of 20 at 90 %: 0.0921 to 0.3826 by the score formula worked by hand', () => {
    // p = 0.2, n = 20, z = 1.6449: (p + z^2/2n -+ z sqrt(p q/n + z^2/4n^2)) / (1 + z^2/n).
    const z = 1.6448536;
    const root = z * Math.sqrt((0.2 * 0.8) / 20 + (z * z) / 1600);
    const { low, high } = wilson(0.2, 20, z);
    expect(low).toBeCloseTo((0.2 + (z * z) / 40 - root) / (1 + (z * z) / 20), 12);
    expect(high).toBeCloseTo((0.2 + (z * z) / 40 + root) / (1 + (z * z) / 20), 12);
  });

  test('[M12] its ends solve |p - x| = z sqrt(x (1 - x) / n), which is what a score interval is', () => {
    for (const [p, n] of [
      [0.5, 10],
      [0.01, 400],
      [0.97, 60],
    ] as const) {
      const { low, high } = wilson(p, n);
      for (const x of [low, high])
        expect(Math.abs(p - x)).toBeCloseTo(1.959963984540054 * Math.sqrt((x * (1 - x)) / n), 10);
    }
  });

  test('[M12] no success in n: from 0 to z^2 / (n + z^2)', () => {
    const { low, high } = wilson(0, 30);
    expect(low).toBe(0);
    expect(high).toBeCloseTo(1.959963984540054 ** 2 / (30 + 1.959963984540054 ** 2), 12);
  });
});

describe('[M12] drawing a kind', () => {
  test('[M12] an even sweep of the unit interval gives each kind its share, and kinds of weight 0 never', () => {
    const weights = [0.1, 0, 3, 0.4, 0, 1.5];
    const draw = kindDrawer(weights);
    const counts = weights.map(() => 0);
    const sweep = 300_000;
    for (let i = 0; i < sweep; i++) {
      const kind = draw((i + 0.5) / sweep);
      counts[kind] = (counts[kind] ?? 0) + 1;
    }
    weights.forEach((w, kind) => {
      expect((counts[kind] ?? 0) / sweep).toBeCloseTo(w / 5, 4);
    });
    expect(counts[1]).toBe(0);
    expect(draw(0.999999999999)).not.toBe(4);
  });

  test('[M12] nothing to draw from is a mistake of the caller', () => {
    expect(() => kindDrawer([0, 0])).toThrow('nothing to draw from');
  });
});
