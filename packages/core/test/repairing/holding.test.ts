import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newtonMetres } from '../../src/quantity/units.ts';
import { apart, pair } from '../../src/repairing/apart.ts';
import { NeedGraph } from '../../src/repairing/need-graph.ts';
import type { Joint } from '../../src/repairing/scene.ts';
import { sizeOf } from '../fastening/sizes.ts';
import {
  adjustable,
  combination,
  does,
  grade,
  handle,
  joint,
  key,
  pliers,
  socket,
  wrench,
} from './hand-made.ts';

const through = (change: Partial<Joint> = {}) =>
  joint({ torque: newtonMetres(30), hold: { drive: 'hex', size: sizeOf('17 mm') }, ...change });
const c17 = combination('17 mm');
const s17 = socket('17 mm');
const bar = handle('bar', '1/2 in', 470);

describe('[M3] turn and hold', () => {
  it('[M3] a single 17 mm wrench cannot turn and hold, a second copy can', () => {
    expect(grade(joint({ torque: newtonMetres(30) }), { a: [c17] })).toBe('proper');
    expect(grade(through(), { a: [c17] })).toBeNull();
    expect(grade(through(), { a: [c17], b: [c17] })).toBe('proper');
  });

  it('[M3] socket and wrench can', () => {
    expect(grade(through(), { s: [s17], h: [bar], w: [c17] })).toBe('proper');
  });

  it('[M3] a socket on both sides cannot, however many handles there are', () => {
    expect(grade(through(), { s: [s17], h: [bar] })).toBeNull();
    expect(grade(through(), { s: [s17], t: [s17], h: [bar], i: [bar] })).toBeNull();
  });

  it('[M3] a socket on a handle holds while a wrench turns', () => {
    // The wrench alone can turn; the open side of the joint is out of a socket's reach.
    const side = through({ access: 'side' });
    expect(grade(side, { s: [s17], h: [bar], w: [c17] })).toBe('proper');
    expect(grade(side, { s: [s17], w: [c17] })).toBeNull();
    // What stands still must bear the torque all the same: pawls strip above 80 N m.
    const tight = through({ access: 'side', torque: newtonMetres(90) });
    const long = combination('17 mm', 600);
    expect(grade(tight, { s: [s17], h: [handle('ratchet')], w: [long] })).toBeNull();
    expect(grade(tight, { s: [s17], h: [bar], w: [long] })).toBe('proper');
  });

  it('[M3] two sizes on one wrench are one piece', () => {
    const uneven = through({ hold: { drive: 'hex', size: sizeOf('19 mm') } });
    expect(grade(uneven, { w: [wrench(240, ['ring', '17 mm'], ['ring', '19 mm'])] })).toBeNull();
    expect(grade(uneven, { w: [c17], v: [combination('19 mm')] })).toBe('proper');
    expect(grade(uneven, { w: [c17], v: [c17] })).toBeNull();
  });

  it('[M3] holding grades: open end proper, jaws with care, locking pliers a last resort', () => {
    const turn = { s: [s17], h: [bar] };
    expect(grade(through(), { ...turn, w: [wrench(200, ['open', '17 mm'])] })).toBe('proper');
    expect(grade(through(), { ...turn, w: [wrench(200, ['flare', '17 mm'])] })).toBe('proper');
    expect(grade(through(), { ...turn, w: [adjustable()] })).toBe('with-care');
    expect(grade(through(), { ...turn, w: [pliers()] })).toBe('last-resort');
    expect(grade(through(), { ...turn, w: [pliers('water-pump')] })).toBeNull();
    expect(grade(through(), { ...turn, w: [adjustable(300, 'pipe')] })).toBeNull();
  });

  it('[M3] a shock absorber stem is held by the key in its end', () => {
    const stem = through({ hold: { drive: 'hex-key', size: sizeOf('6 mm') } });
    expect(grade(stem, { w: [c17] })).toBeNull();
    expect(grade(stem, { w: [c17], k: [key('hex-key', 60, '5 mm', '6 mm')] })).toBe('proper');
  });

  it('[M3] a struck ring, its hammer and what holds are three pieces', () => {
    const tight = through({ torque: newtonMetres(150) });
    const hammer = [does('strike-hard')];
    expect(grade(tight, { a: [c17], m: hammer })).toBeNull();
    expect(grade(tight, { a: [c17], b: [c17], m: hammer })).toBe('with-care');
    expect(grade(tight, { a: [c17], b: [c17, does('strike-hard')] })).toBeNull();
    expect(grade(tight, { a: [c17], m: hammer, s: [s17], h: [bar] })).toBe('with-care');
  });
});

const few = fc.uniqueArray(fc.integer({ min: 0, max: 7 }), { maxLength: 7 });

describe('[M3] pieces told off to two sides', () => {
  it('[M3] pair is met exactly when two different pieces can be told off', () => {
    fc.assert(
      fc.property(few, few, few, (a, b, kit) => {
        const graph = new NeedGraph();
        const need = graph.any(pair(graph, a, b));
        const has = new Set(kit);
        const met = need !== null && graph.metBy((p) => has.has(p))[need] === true;
        const possible = a.some((x) => has.has(x) && b.some((y) => y !== x && has.has(y)));
        expect(met).toBe(possible);
      }),
      { numRuns: 500 },
    );
  });

  it('[M3] apart is met exactly when one piece is left for the side and the others meet the rest', () => {
    const ways = fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 7 }), { minLength: 1, maxLength: 3 }), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(few, ways, few, fc.boolean(), (side, rest, kit, nested) => {
        const graph = new NeedGraph();
        const inner = graph.any(rest.map((pieces) => ({ pieces, needs: [] })));
        // Once more around, so that the rest is built on smaller needs.
        const core =
          nested && inner !== null
            ? graph.any([
                { pieces: [], needs: [inner] },
                { pieces: [0, 1], needs: [] },
              ])
            : inner;
        const need = graph.any(apart(graph, side, core));
        const has = new Set(kit);
        const met = need !== null && graph.metBy((p) => has.has(p))[need] === true;
        const all = nested ? [...rest, [0, 1]] : rest;
        const possible = side.some(
          (x) => has.has(x) && all.some((way) => way.every((p) => p !== x && has.has(p))),
        );
        expect(met).toBe(possible);
      }),
      { numRuns: 500 },
    );
  });

  it('[M3] the same with a rest that adds up units', () => {
    fc.assert(
      fc.property(few, few, few, fc.integer({ min: 1, max: 3 }), (side, from, kit, units) => {
        const graph = new NeedGraph();
        const rest = graph.enough(
          units,
          from.map((piece) => ({ piece, units: 1 })),
        );
        const need = graph.any(apart(graph, side, rest));
        const has = new Set(kit);
        const met = need !== null && graph.metBy((p) => has.has(p))[need] === true;
        const possible = side.some(
          (x) => has.has(x) && from.filter((p) => p !== x && has.has(p)).length >= units,
        );
        expect(met).toBe(possible);
      }),
      { numRuns: 500 },
    );
  });
});
