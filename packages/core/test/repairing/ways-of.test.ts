import { describe, expect, it } from 'vitest';
import { cents, grams, newtonMetres } from '../../src/quantity/units.ts';
import type { Scene } from '../../src/repairing/scene.ts';
import { waysOf } from '../../src/repairing/ways-of.ts';
import { sizeOf } from '../fastening/sizes.ts';
import { combination, does, handle, joint, piece, scene, socket } from './hand-made.ts';

const table: Scene = scene({
  joints: [
    joint({ id: 'plain', torque: newtonMetres(30) }),
    joint({ id: 'through', torque: newtonMetres(30), hold: { drive: 'hex', size: sizeOf('17 mm') } }),
  ],
  pieces: [
    piece('w', [combination('17 mm')], { grams: grams(180) }),
    piece('v', [combination('17 mm')], { grams: grams(190), owned: false, cents: cents(900) }),
    piece('s', [socket('17 mm')], { grams: grams(90) }),
    piece('bar', [handle('bar')], { grams: grams(900) }),
    piece('ratchet', [handle('ratchet', '1/2 in', 270)], { grams: grams(580) }),
    piece('noise', [does('grip')], { grams: grams(1) }),
  ],
});
const listed = (id: string, limit: number, of = table) =>
  waysOf(of, { kind: 'turn', joint: id }, limit).map((way) => [
    way.pieces.join(' + '),
    way.grade,
    way.grams,
    way.cents,
  ]);

describe('[M2] ways of a need, for reading', () => {
  it('[M2] are minimal and cheapest first: by money, then by grams', () => {
    expect(listed('plain', 9)).toEqual([
      ['w', 'proper', 180, 0],
      ['s + ratchet', 'proper', 670, 0],
      ['s + bar', 'proper', 990, 0],
      ['v', 'proper', 190, 900],
    ]);
    expect(listed('plain', 2).map(([pieces]) => pieces)).toEqual(['w', 's + ratchet']);
  });

  it('[M3] of a pair name both sides', () => {
    expect(listed('through', 9).map(([pieces]) => pieces)).toEqual([
      'w + s + ratchet',
      'w + s + bar',
      'w + v',
      'v + s + ratchet',
      'v + s + bar',
    ]);
  });

  it('[M2] carry the grade they give; a set that gives a better grade is listed once, at that', () => {
    const need = { kind: 'function', fn: 'lift', amount: 1000 } as const;
    const pieces = [
      piece('jack', [does('lift', { amount: 2000 })], { grams: grams(4000) }),
      piece('poor', [does('lift', { amount: 2000, grade: 'with-care' })], { grams: grams(2000) }),
      piece('both', [does('lift', { amount: 2000 }), does('lift', { amount: 9000, grade: 'last-resort' })], {
        grams: grams(5000),
      }),
    ];
    expect(waysOf(scene({ pieces }), need, 9).map((way) => [way.pieces.join(), way.grade])).toEqual([
      ['poor', 'with-care'],
      ['jack', 'proper'],
      ['both', 'proper'],
    ]);
  });

  it('[M2] of several at once are every smallest set, and what is not sold singly has no price', () => {
    const pieces = [1, 2, 3].map((n) =>
      piece(`l${n}`, [does('lever-tyre')], n === 3 ? { owned: false, cents: null, grams: grams(300) } : {}),
    );
    const need = { kind: 'function', fn: 'lever-tyre', count: 2 } as const;
    expect(waysOf(scene({ pieces }), need, 9).map((way) => [way.pieces.join(' '), way.cents])).toEqual([
      ['l1 l2', 0],
      ['l1 l3', null],
      ['l2 l3', null],
    ]);
  });

  it('[M2] are none where nothing does it', () => {
    expect(waysOf(table, { kind: 'function', fn: 'weld' }, 5)).toEqual([]);
  });
});
