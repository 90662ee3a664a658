import { describe, expect, it } from 'vitest';
import { millimetres, newtonMetres } from '../../src/quantity/units.ts';
import type { ToolOffer } from '../../src/repairing/scene.ts';
import { sizeOf } from '../fastening/sizes.ts';
import {
  adapter,
  adjustable,
  bit,
  combination,
  deep,
  does,
  extension,
  grade,
  handle,
  joint,
  key,
  pliers,
  socket,
  tube,
  wrench,
} from './hand-made.ts';

const at = (torque: number, change: Parameters<typeof joint>[0] = {}) =>
  joint({ torque: newtonMetres(torque), ...change });
const wheel = (torque: number) =>
  at(torque, { size: sizeOf('21 mm'), stance: 'standing', critical: 'wheel', access: 'deep' });

describe('[M2] drive trains', () => {
  it('[M2] a socket needs a handle of its drive', () => {
    expect(grade(at(50), { s: [socket('17 mm')] })).toBeNull();
    expect(grade(at(50), { h: [handle('ratchet')] })).toBeNull();
    expect(grade(at(50), { s: [socket('17 mm')], h: [handle('ratchet', '1/2 in', 270)] })).toBe('proper');
    expect(grade(at(50), { s: [socket('17 mm')], h: [handle('ratchet', '3/8 in', 270)] })).toBeNull();
  });

  it('[M2] pawls strip above 80 N m, a bar of the same length does not', () => {
    const ratchet = { s: [socket('17 mm')], h: [handle('ratchet', '1/2 in', 600)] };
    expect(grade(at(80), ratchet)).toBe('proper');
    expect(grade(at(80.1), ratchet)).toBeNull();
    expect(grade(at(80.1), { s: [socket('17 mm')], h: [handle('bar', '1/2 in', 600)] })).toBe('proper');
  });

  it('[M2] torque wrenches do not undo', () => {
    expect(grade(at(20), { s: [socket('17 mm')], h: [handle('torque', '1/2 in', 480, 200)] })).toBeNull();
  });

  it('[M2] a spinner gives 6 N m', () => {
    const spin = { s: [socket('10 mm', '1/4 in')], h: [handle('spinner', '1/4 in', 150)] };
    expect(grade(at(6, { size: sizeOf('10 mm') }), spin)).toBe('proper');
    expect(grade(at(6.1, { size: sizeOf('10 mm') }), spin)).toBeNull();
  });

  it('[M2] an impact driver gives its own maximum, and no more than its drive bears', () => {
    const impact = (max: number) => ({
      s: [socket('17 mm')],
      h: [handle('impact', '1/2 in', 220, max)],
    });
    expect(grade(at(250), impact(250))).toBe('proper');
    expect(grade(at(251), impact(250))).toBeNull();
    expect(grade(at(301), impact(400))).toBeNull();
  });

  it('[M2] a quarter-inch adapter replaces the quarter-inch handle (common practice)', () => {
    const small = at(20, { size: sizeOf('8 mm') });
    const ratchet = handle('ratchet', '3/8 in', 200);
    expect(grade(small, { s: [socket('8 mm', '1/4 in')], h: [ratchet] })).toBeNull();
    const adapted = { s: [socket('8 mm', '1/4 in')], h: [ratchet], a: [adapter('3/8 in', '1/4 in')] };
    expect(grade(small, adapted)).toBe('proper');
    // The adapter goes one way only.
    expect(grade(small, { ...adapted, a: [adapter('1/4 in', '3/8 in')] })).toBeNull();
  });

  it('[M2] exactly one adapter: half inch to a quarter does not go in two steps', () => {
    const small = at(20, { size: sizeOf('8 mm') });
    const steps = { a: [adapter('1/2 in', '3/8 in')], b: [adapter('3/8 in', '1/4 in')] };
    expect(grade(small, { s: [socket('8 mm', '1/4 in')], h: [handle('bar')], ...steps })).toBeNull();
  });

  it('[M2] a quarter inch bears 30 N m behind any adapter', () => {
    const tools = {
      s: [socket('13 mm', '1/4 in')],
      h: [handle('bar', '3/8 in', 250)],
      a: [adapter('3/8 in', '1/4 in')],
    };
    expect(grade(at(30, { size: sizeOf('13 mm') }), tools)).toBe('proper');
    expect(grade(at(30.1, { size: sizeOf('13 mm') }), tools)).toBeNull();
  });

  it('[M2] remote heads want 100 mm of extension, of the drive of the socket or of the handle', () => {
    const remote = at(30, { access: 'remote' });
    const base = {
      s: [socket('17 mm', '3/8 in')],
      h: [handle('bar', '1/2 in')],
      a: [adapter('1/2 in', '3/8 in')],
    };
    expect(grade(remote, base)).toBeNull();
    expect(grade(remote, { ...base, e: [extension(75, '3/8 in')] })).toBeNull();
    expect(grade(remote, { ...base, e: [extension(100, '3/8 in')] })).toBe('proper');
    expect(grade(remote, { ...base, e: [extension(125, '1/2 in')] })).toBe('proper');
    expect(grade(remote, { ...base, e: [extension(150, '1/4 in')] })).toBeNull();
  });

  it('[M2] heads at an angle want a joint or a wobble end', () => {
    const angle = at(30, { access: 'angle' });
    const base = { s: [socket('17 mm')], h: [handle('bar')] };
    expect(grade(angle, base)).toBeNull();
    expect(grade(angle, { ...base, e: [extension(125)] })).toBeNull();
    expect(grade(angle, { ...base, e: [extension(125, '1/2 in', true)] })).toBe('proper');
    expect(grade(angle, { ...base, e: [{ kind: 'joint', drive: '1/2 in' }] })).toBe('proper');
  });

  it('[M2] one piece is never two parts of the same train', () => {
    // A folding set whose one piece is socket, handle and extension at once is still one piece.
    const folding: readonly ToolOffer[] = [socket('17 mm'), handle('bar'), extension(150)];
    expect(grade(at(50), { f: folding })).toBeNull();
    expect(grade(at(50), { f: folding, g: folding })).toBe('proper');
    expect(grade(at(50, { access: 'remote' }), { f: folding, g: folding })).toBeNull();
    expect(grade(at(50, { access: 'remote' }), { f: folding, g: folding, h: folding })).toBe('proper');
  });
});

describe('[M2] levers and people', () => {
  it('[M2] body weight counts beside a wheel and not on the back under the vehicle', () => {
    const bar = { s: [deep('21 mm')], h: [handle('bar', '1/2 in', 450)] };
    // 75 kg x 0.7 x 9.80665 x 0.4275 m = 220 N m; by arm 200 N gives 85, 350 N gives 150.
    expect(grade(wheel(210), bar)).toBe('proper');
    expect(grade(wheel(210), bar, 50)).toBeNull();
    expect(grade({ ...wheel(210), stance: 'under' }, bar)).toBeNull();
    expect(grade({ ...wheel(140), stance: 'under' }, bar)).toBe('with-care');
  });

  it('[M2] a tube on a bar reaches further, with care; on a ratchet it does not', () => {
    const u = at(170, { access: 'deep', stance: 'under' });
    const bar = { s: [deep('17 mm')], h: [handle('bar', '1/2 in', 470)] };
    expect(grade(u, bar)).toBeNull();
    // 0.47 + 0.6 - 0.15 = 0.92 m, 184 N m at 200 N.
    expect(grade(u, { ...bar, t: [tube(600)] })).toBe('with-care');
    expect(
      grade(u, { s: [deep('17 mm')], h: [handle('ratchet', '1/2 in', 470)], t: [tube(600)] }),
    ).toBeNull();
    // Not for lack of torque that the pawls bear: 75 N m is within them, and 0.2 m too short a lever.
    const short = { s: [socket('17 mm')], t: [tube(600)] };
    expect(grade(at(75), { ...short, h: [handle('bar', '1/2 in', 200)] })).toBe('with-care');
    expect(grade(at(75), { ...short, h: [handle('ratchet', '1/2 in', 200)] })).toBeNull();
    expect(grade(at(75), { ...short, h: [handle('t-bar', '1/2 in', 200)] })).toBeNull();
    // The half inch drive bears 300 N m however long the tube.
    expect(grade(at(301, { access: 'deep', stance: 'under' }), { ...bar, t: [tube(2000)] })).toBeNull();
  });

  it('[M2] a ring struck with a hammer undoes 200 N m with care; a ratchet ring is not struck', () => {
    const ring = { w: [combination('17 mm')], m: [does('strike-hard')] };
    expect(grade(at(100), { w: [combination('17 mm')] })).toBeNull();
    expect(grade(at(200), ring)).toBe('with-care');
    expect(grade(at(200.1), ring)).toBeNull();
    expect(
      grade(at(100), { w: [wrench(230, ['ratchet-ring', '17 mm'])], m: [does('strike-hard')] }),
    ).toBeNull();
    expect(grade(at(100), { w: [wrench(230, ['open', '17 mm'])], m: [does('strike-hard')] })).toBeNull();
    // A poor hammer makes a poor way.
    expect(grade(at(100), { ...ring, m: [does('strike-hard', { grade: 'last-resort' })] })).toBe(
      'last-resort',
    );
    expect(grade(at(100, { access: 'recess' }), ring)).toBeNull();
  });

  it('[M2] rust: half as much again to undo, and twelve points a grade worse', () => {
    const tools = { s: [socket('17 mm')], h: [handle('bar', '1/2 in', 450)] };
    expect(grade(at(80), tools)).toBe('proper');
    expect(grade(at(80, { rusty: true }), tools)).toBe('with-care');
    const twelve = { s: [socket('17 mm', '1/2 in', { points: 12 })], h: [handle('bar', '1/2 in', 600)] };
    expect(grade(at(50), twelve)).toBe('proper');
    expect(grade(at(50, { rusty: true }), twelve)).toBe('with-care');
  });

  it('[M2] a near size is good for so much only', () => {
    const tools = { s: [socket('16 mm')], h: [handle('bar', '1/2 in', 600)] };
    expect(grade(at(80, { size: sizeOf('5/8 in') }), tools)).toBe('with-care');
    expect(grade(at(81, { size: sizeOf('5/8 in') }), tools)).toBeNull();
  });

  it('[M2] a brace is its own handle and takes no extension', () => {
    const brace: ToolOffer = {
      kind: 'brace',
      sizes: ['17 mm', '19 mm', '21 mm', '22 mm'].map(sizeOf),
      depth: 'deep',
      lever: millimetres(530),
    };
    expect(grade(wheel(200), { b: [brace] })).toBe('proper');
    expect(grade({ ...wheel(100), access: 'remote' }, { b: [brace], e: [extension(250)] })).toBeNull();
  });
});

describe('[M2] critical places', () => {
  it('[M2] forbid adjustable wrenches and pliers, for turning and for holding', () => {
    const low = { torque: newtonMetres(10), size: sizeOf('12 mm') };
    const jaws = {
      a: [adjustable()],
      b: [adjustable(250, 'parallel')],
      c: [pliers()],
      d: [pliers('water-pump')],
    };
    expect(grade(joint(low), { a: [adjustable()] })).toBe('with-care');
    expect(grade(joint(low), { c: [pliers()] })).toBe('last-resort');
    for (const critical of ['wheel', 'brake', 'steering'] as const) {
      expect(grade(joint({ ...low, critical }), jaws)).toBeNull();
      const held = joint({ ...low, critical, hold: { drive: 'hex', size: sizeOf('12 mm') } });
      expect(grade(held, { w: [combination('12 mm')], ...jaws })).toBeNull();
    }
    expect(grade(joint({ ...low, critical: 'support' }), { a: [adjustable()] })).toBe('with-care');
  });

  it('[M2] pipe jaws turn no hexagon', () => {
    expect(grade(at(10), { p: [adjustable(300, 'pipe')] })).toBeNull();
  });
});

describe('[M2] inside drives', () => {
  const torque = { torque: newtonMetres(20) };

  it('[M2] an L-key of the very size, within its lever', () => {
    const cap = joint({ ...torque, drive: 'hex-key', size: sizeOf('8 mm') });
    expect(grade(cap, { k: [key('hex-key', 110, '6 mm', '8 mm', '10 mm')] })).toBe('proper');
    expect(grade(cap, { k: [key('hex-key', 60, '8 mm')] })).toBe('with-care');
    expect(grade(cap, { k: [key('hex-key', 50, '8 mm')] })).toBeNull();
    expect(grade(cap, { k: [key('hex-key', 110, '5/16 in')] })).toBeNull();
  });

  it('[M2] a tight hex key in a lobe is forbidden', () => {
    const screw = joint({ torque: newtonMetres(5), drive: 'lobe', size: sizeOf('T30') });
    expect(grade(screw, { k: [key('hex-key', 110, '5 mm')] })).toBeNull();
    expect(grade(screw, { k: [key('lobe', 110, 'T30')] })).toBe('proper');
  });

  it('[M2] external lobes take their own socket and nothing else', () => {
    const bolt = joint({ ...torque, drive: 'lobe-external', size: sizeOf('E12') });
    const bar = handle('bar', '3/8 in', 250);
    expect(grade(bolt, { s: [bit('lobe-external', '3/8 in', 'E12')], h: [bar] })).toBe('proper');
    expect(grade(bolt, { s: [bit('lobe-external', '3/8 in', 'E14')], h: [bar] })).toBeNull();
    // 10 mm six-point on E12 is an approximate pair of the trade: not for the planner.
    expect(grade(bolt, { s: [socket('10 mm', '3/8 in')], h: [bar] })).toBeNull();
  });

  it('[M2] a screwdriver gives what fingers give; cross and slot allow a step with care', () => {
    const driver = (size: string): ToolOffer => ({
      kind: 'driver',
      head: 'cross',
      sizes: [sizeOf(size)],
      length: millimetres(200),
    });
    const screw = (nm: number) =>
      joint({ torque: newtonMetres(nm), drive: 'cross', size: sizeOf('cross 2') });
    expect(grade(screw(4), { d: [driver('cross 2')] })).toBe('proper');
    expect(grade(screw(4), { d: [driver('cross 3')] })).toBe('with-care');
    expect(grade(screw(7), { d: [driver('cross 2')] })).toBeNull();
  });

  it('[M2] a square plug takes the bare end of a bar or an extension, with care', () => {
    for (const [size, drive] of [
      ['1/2 in', '1/2 in'],
      ['13 mm', '1/2 in'],
      ['3/8 in', '3/8 in'],
      ['10 mm', '3/8 in'],
    ] as const) {
      const plug = joint({ torque: newtonMetres(40), drive: 'square', size: sizeOf(size) });
      expect(grade(plug, { h: [handle('bar', drive, 300)] }), size).toBe('with-care');
      expect(grade(plug, { e: [extension(125, drive)] }), size).toBeNull();
      // An extension's end, driven by whatever handle reaches it.
      const other = drive === '1/2 in' ? '3/8 in' : '1/2 in';
      const driven = {
        e: [extension(125, drive)],
        h: [handle('bar', other, 300)],
        a: [adapter(other, drive)],
      };
      expect(grade(plug, driven), size).toBe('with-care');
      // The handle's own end does not fit, nor does an adapter count as an extension.
      expect(grade(plug, { h: [handle('bar', other, 300)], a: [adapter(other, drive)] }), size).toBeNull();
      const proper = { s: [bit('square', drive, size)], h: [handle('bar', drive, 300)] };
      expect(grade(plug, proper), size).toBe('proper');
    }
    const eleven = joint({ torque: newtonMetres(40), drive: 'square', size: sizeOf('11 mm') });
    expect(
      grade(eleven, { h: [handle('bar', '1/2 in', 300)], g: [handle('bar', '3/8 in', 300)] }),
    ).toBeNull();
  });

  it('[M2] a remote plug: the extension is itself the reach', () => {
    const plug = joint({
      torque: newtonMetres(40),
      drive: 'square',
      size: sizeOf('1/2 in'),
      access: 'remote',
    });
    const bar = handle('bar', '1/2 in', 300);
    expect(grade(plug, { h: [bar] })).toBeNull();
    expect(grade(plug, { h: [bar], e: [extension(125)] })).toBe('with-care');
    expect(grade(plug, { h: [bar], e: [extension(75)] })).toBeNull();
  });
});

describe('[M2] pipes, hubs, plugs', () => {
  const union = joint({
    drive: 'flare',
    size: sizeOf('10 mm'),
    torque: newtonMetres(16),
    critical: 'brake',
    stance: 'under',
  });

  it('[M2] brake pipe nuts take a flare wrench or a crow-foot, and nothing else', () => {
    expect(grade(union, { f: [wrench(150, ['flare', '10 mm'], ['flare', '11 mm'])] })).toBe('proper');
    const foot: ToolOffer = { kind: 'crow-foot', form: 'flare', size: sizeOf('10 mm'), drive: '3/8 in' };
    expect(grade(union, { f: [foot], h: [handle('ratchet', '3/8 in', 200)] })).toBe('proper');
    expect(grade(union, { w: [combination('10 mm')] })).toBeNull();
    expect(grade(union, { a: [adjustable()], p: [pliers()] })).toBeNull();
    expect(grade(union, { s: [socket('10 mm')], h: [handle('bar')] })).toBeNull();
  });

  it('[M2] off the brakes an open end is a last resort', () => {
    const fuel = joint({ drive: 'flare', size: sizeOf('10 mm'), torque: newtonMetres(16) });
    expect(grade(fuel, { w: [combination('10 mm')] })).toBe('last-resort');
    expect(grade(fuel, { w: [wrench(160, ['ring', '10 mm'])] })).toBeNull();
  });

  it('[M2] one 10 mm flare wrench serves every union when all are 10 mm (common practice, no source)', () => {
    const only = { f: [wrench(150, ['flare', '8 mm'], ['flare', '10 mm'])] };
    for (const at10 of [union, { ...union, id: 'k', rusty: true }]) expect(grade(at10, only)).toBe('proper');
    expect(grade({ ...union, size: sizeOf('11 mm') }, only)).toBeNull();
  });

  it('[M2] a ring nut takes a socket whose range covers it, or drift and hammer as a last resort', () => {
    const nut = joint({ drive: 'locknut-hex', size: sizeOf('54 mm'), torque: newtonMetres(60) });
    const ring = (form: 'hex' | 'peg', to: number): ToolOffer => ({
      kind: 'locknut-socket',
      form,
      from: millimetres(50),
      to: millimetres(to),
      drive: '1/2 in',
    });
    expect(grade(nut, { s: [ring('hex', 54)], h: [handle('bar')] })).toBe('proper');
    expect(grade(nut, { s: [ring('hex', 52)], h: [handle('bar')] })).toBeNull();
    expect(grade(nut, { s: [ring('peg', 54)], h: [handle('bar')] })).toBeNull();
    expect(grade(nut, { d: [does('drive-drift')], m: [does('strike-hard')] })).toBe('last-resort');
    // One thing that is both drift and hammer is still one thing.
    expect(grade(nut, { d: [does('drive-drift'), does('strike-hard')] })).toBeNull();
  });

  it('[M2] plugs come in two sizes: the socket for one does not turn the other', () => {
    // A spark-plug maker's page: 16 mm (5/8 in) most, 13/16 in (20.8 mm) older ones.
    const well = (size: string) => joint({ torque: newtonMetres(25), access: 'retain', size: sizeOf(size) });
    const plugSocket = (size: string) => socket(size, '3/8 in', { depth: 'deep', retains: true, thin: true });
    const ratchet = handle('ratchet', '3/8 in', 200);
    expect(grade(well('16 mm'), { s: [plugSocket('16 mm')], h: [ratchet] })).toBe('proper');
    expect(grade(well('20.8 mm'), { s: [plugSocket('16 mm')], h: [ratchet] })).toBeNull();
    expect(grade(well('20.8 mm'), { s: [plugSocket('13/16 in')], h: [ratchet] })).not.toBe('proper');
    expect(grade(well('20.8 mm'), { s: [plugSocket('20.8 mm')], h: [ratchet] })).toBe('proper');
    // 16 mm serves 5/8 in (15.875 mm) with care: 0.8 % over.
    expect(grade(well('5/8 in'), { s: [plugSocket('16 mm')], h: [ratchet] })).toBe('with-care');
    expect(grade(well('16 mm'), { s: [deep('16 mm', '3/8 in')], h: [ratchet] })).toBe('with-care');
  });
});
