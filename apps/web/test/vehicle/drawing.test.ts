import { PATTERNS } from '@waymend/catalogue/patterns/all';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { describe, expect, it } from 'vitest';
import { shapeOf, SHAPES } from '../../src/places/vehicle/drawing/shapes.ts';
import {
  DESK,
  keyKilograms,
  PHONE,
  sideLayout,
  spread,
} from '../../src/places/vehicle/drawing/side-layout.ts';
import { keyOf, stillToDo } from '../../src/places/vehicle/walk/next-place.ts';

describe('the side view', () => {
  it('has an outline of its own for each pattern, wheels on the ground and berths inside the paper', () => {
    const ids = PATTERNS.map((p) => shapeOf(p.id, p.kind, p.features));
    expect(new Set(ids).size).toBe(PATTERNS.length);
    for (const p of PATTERNS)
      for (const paper of [DESK, PHONE]) {
        const shape = SHAPES[shapeOf(p.id, p.kind, p.features)](p.wheelbaseMm);
        const spots = p.berths.map((b) => ({ id: b.id, xMm: b.xMm, roof: b.roof ?? false, kg: 40 }));
        const at = sideLayout(shape, spots, 4200, paper);
        expect(at.x(p.wheelbaseMm) - at.x(0)).toBeCloseTo(p.wheelbaseMm * at.pxPerMm, 6);
        expect(at.y(0) - at.y(1000)).toBeCloseTo(1000 * at.pxPerMm, 6);
        for (const spot of at.spots) {
          const mm = p.berths.find((b) => b.id === spot.id)?.xMm ?? 0;
          expect(spot.x).toBeCloseTo(at.x(mm), 6);
          expect(spot.x - paper.boxWidth / 2).toBeGreaterThanOrEqual(0);
          expect(spot.x + paper.boxWidth / 2).toBeLessThanOrEqual(paper.width);
          expect(spot.y).toBeLessThan(at.ground);
        }
        const boxes = at.spots.filter((s) => !spots.find(({ id }) => id === s.id)?.roof);
        for (const [n, a] of boxes.entries())
          for (const b of boxes.slice(n + 1))
            expect(
              Math.abs(a.x - b.x) >= paper.boxWidth || Math.abs(a.y - b.y) >= paper.boxHeight,
              `${p.id} ${a.id} ${b.id}`,
            ).toBe(true);
      }
  });

  it('moves balloons apart, in order and on the paper', () => {
    const out = spread([10, 12, 200, 201, 299], 30, 300);
    for (const [n, x] of out.entries())
      if (n > 0) expect(x - (out[n - 1] ?? 0)).toBeGreaterThanOrEqual(30 - 1e-9);
    expect(out.at(-1)).toBeLessThanOrEqual(300);
  });

  it('draws its key with a round number of kilograms', () => {
    expect(keyKilograms(150 / 1800, 150)).toBe(500);
    expect(keyKilograms(150 / 4200, 150)).toBe(1000);
  });
});

describe('what is next on the walk', () => {
  const row = (place: string, status: FittingRow['status'] = 'assumed'): FittingRow => ({
    id: place,
    fitting: null,
    added: false,
    place,
    title: place,
    position: null,
    system: 'brakes',
    area: 'rear',
    drive: 'hex',
    size: '10 mm',
    torqueNm: 1,
    access: 'open',
    hold: null,
    stance: 'kneeling',
    critical: null,
    status,
    by: null,
    on: null,
    note: null,
    confirmed: false,
    usual: [],
    jobs: [],
    stops: 0,
  });
  const walk = { first: [row('a'), row('b', 'measured')], second: [row('c'), row('d', 'read'), row('e')] };
  const left = (skipped: string[], outOfReach: string[]) =>
    stillToDo(walk, { skipped, outOfReach }).map(keyOf);

  it('leaves out what is measured, and puts what was left for later at the end', () => {
    expect(left([], [])).toEqual(['a', 'c', 'd', 'e']);
    expect(left(['a'], [])).toEqual(['c', 'd', 'e', 'a']);
    expect(left(['d'], ['a'])).toEqual(['c', 'e', 'd', 'a']);
    expect(left(['a'], ['a'])).toEqual(['c', 'd', 'e', 'a']);
  });
});
