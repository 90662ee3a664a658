import { millimetres, newtonMetres } from '@waymend/core/quantity/units';
import type { Joint, ToolOffer } from '@waymend/core/repairing/scene';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/checking/bench.ts';
import { jointMark } from '../../src/checking/joints.ts';
import { CREW, handle, joint, mm, piece, socket, undone, wrench } from './hand-made.ts';

const through = (nm = 60, change: Partial<Joint> = {}): Joint =>
  joint({ torque: newtonMetres(nm), hold: { drive: 'hex', size: mm(17) }, ...change });
const ring = wrench(0.5, ['ring', mm(17)], ['open', mm(17)]);
const bar = handle('bar', 0.5);

describe('turn and hold', () => {
  it('[M3] one wrench cannot turn a bolt and hold its nut; two of the same can', () => {
    expect(undone(through(), ring)).toBeNull();
    expect(undone(through(), ring, ring)).toBe('proper');
    expect(undone(joint({ torque: newtonMetres(60) }), ring)).toBe('proper');
  });

  it('[M3] a socket on a bar turns while a wrench holds, but two drive handles do not meet on one joint', () => {
    expect(undone(through(), socket(mm(17)), bar, ring)).toBe('proper');
    expect(undone(through(), socket(mm(17)), bar, socket(mm(17)), bar)).toBeNull();
    expect(undone(through(), socket(mm(17)), bar)).toBeNull();
  });

  it('[M3] a socket with a handle holds while a wrench turns, within what its drive bears', () => {
    const side = through(60, { access: 'side' });
    expect(undone(side, ring, socket(mm(17)), bar)).toBe('proper');
    const small = socket(mm(17), { drive: '1/4 in' });
    expect(undone(side, ring, small, handle('bar', 0.5, '1/4 in'))).toBeNull();
  });

  it('[M3] jaws hold with care, locking pliers as a last resort, and neither on wheel, brake or steering', () => {
    const jaw: ToolOffer = {
      kind: 'adjustable',
      jaw: 'adjustable',
      from: millimetres(0),
      to: millimetres(30),
      length: millimetres(250),
    };
    const pliers: ToolOffer = {
      kind: 'pliers',
      form: 'locking',
      to: millimetres(40),
      length: millimetres(250),
    };
    expect(undone(through(), ring, jaw)).toBe('with-care');
    expect(undone(through(), ring, pliers)).toBe('last-resort');
    expect(undone(through(), ring, { ...pliers, form: 'water-pump' })).toBeNull();
    expect(undone(through(60, { critical: 'steering' }), ring, jaw, pliers)).toBeNull();
  });

  it('[M3] the other end may take another size or shape', () => {
    const shock = through(30, { hold: { drive: 'hex-key', size: mm(6) } });
    const key: ToolOffer = { kind: 'key', head: 'hex-key', sizes: [mm(6)], arm: millimetres(100) };
    expect(undone(shock, ring)).toBeNull();
    expect(undone(shock, ring, key)).toBe('proper');
    const odd = through(30, { hold: { drive: 'hex', size: mm(19) } });
    expect(undone(odd, ring, ring)).toBeNull();
    expect(undone(odd, ring, wrench(0.2, ['open', mm(19)]))).toBe('proper');
  });

  it('[M3] a piece that could serve on both sides serves on one only', () => {
    const combination = piece('set', [ring, wrench(0.5, ['ring', mm(17)])]);
    expect(jointMark(layOut([combination]), through(), CREW)).toBeNull();
    expect(jointMark(layOut([combination, piece('other', [ring])]), through(), CREW)).toBe('proper');
  });

  it('[M3] the better pair is found when the first is not the best', () => {
    const open = wrench(0.5, ['open', mm(17)]);
    expect(undone(through(), open, open)).toBe('with-care');
    // The ring turns, the open end holds: the other way round would be with care.
    expect(undone(through(), open, ring)).toBe('proper');
  });
});
