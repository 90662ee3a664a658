import { PATTERNS } from '@waymend/catalogue/patterns/all';
import { describe, expect, it } from 'vitest';
import { bodyPath, EXTENT, OUTLINES, PATTERN_IDS } from '../../src/places/garage/begin/outlines.ts';

describe('outlines of the patterns', () => {
  it('are there for every pattern of the catalogue, in its order', () => {
    expect(PATTERN_IDS).toEqual(PATTERNS.map(({ id }) => id));
  });

  it.each(PATTERNS)(
    '$id stands on the wheelbase of its pattern and fits the sheet',
    ({ id, kind, wheelbaseMm }) => {
      const outline = Object.entries(OUTLINES).find(([key]) => key === id)?.[1];
      if (outline === undefined) throw new Error(`no outline of ${id}`);
      expect(outline.wheelbaseMm).toBe(wheelbaseMm);
      expect(outline.wheels).toEqual(kind === 'trailer' ? [wheelbaseMm] : [0, wheelbaseMm]);
      for (const [x, y] of outline.body) {
        expect(x).toBeGreaterThanOrEqual(EXTENT.fromMm);
        expect(x).toBeLessThanOrEqual(EXTENT.toMm);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThanOrEqual(EXTENT.topMm);
      }
      expect(bodyPath(outline)).toMatch(/^M[-\d .LAZ]+Z$/);
    },
  );
});
