import { describe, expect, it } from 'vitest';
import type { Head, Reached, ToolForm } from '../../src/fastening/access.ts';
import { bitReachOf, reachOf } from '../../src/fastening/access.ts';
import type { Access } from '../../src/repairing/scene.ts';

const FORMS: readonly ToolForm[] = [
  'shallow-socket',
  'deep-socket',
  'ring',
  'ratchet-ring',
  'open-end',
  'adjustable',
  'parallel-jaw',
  'locking-pliers',
  'water-pump-pliers',
];

/**
 * The table of docs/model.md M2, written out once more at 20 N m on a clean head that nobody's life hangs on, plain sockets:
 * p proper, c with care, l last resort, - cannot, E proper with an extension, B proper with a joint. Common practice, no
 * source.
 */
const AT_20_NM: Readonly<Record<Access, string>> = {
  open: 'p c p p c c c l l',
  deep: '- p c c c c c l l',
  recess: 'p p - - - - - - -',
  side: '- - p p c c c l l',
  tight: 'c c c p c - - - -',
  remote: 'E E - - - - - - -',
  angle: 'B B c c c - - - -',
  slotted: '- - - - c - - - -',
  retain: '- c - - - - - - -',
};
const SIGNS: Readonly<Record<string, Reached | null>> = {
  p: { grade: 'proper', reach: 'straight' },
  c: { grade: 'with-care', reach: 'straight' },
  l: { grade: 'last-resort', reach: 'straight' },
  E: { grade: 'proper', reach: 'extended' },
  B: { grade: 'proper', reach: 'bent' },
  '-': null,
};

const head = (access: Access, more: Partial<Head> = {}): Head => ({
  access,
  torque: 20,
  rusty: false,
  ...more,
});
const grade = (form: ToolForm, more: Partial<Head> = {}, access: Access = 'open') =>
  reachOf(form, head(access, more))?.grade ?? null;

const cells = Object.entries(AT_20_NM).flatMap(([access, line]) =>
  line.split(' ').map((sign, n) => [FORMS[n], access, sign] as const),
);

describe('[M2] access table', () => {
  it('[M2] has a cell for every form at every access', () => {
    expect(cells).toHaveLength(9 * FORMS.length);
  });

  it.each(cells)('[M2] %s at %s: %s', (form, access, sign) => {
    if (form === undefined) throw new Error('a line of the table is too long');
    expect(reachOf(form, head(access as Access))).toEqual(SIGNS[sign]);
  });

  it('[M2] a slotted socket goes over a wire, a retaining one holds a plug properly', () => {
    const marked = { slotted: true, retains: false };
    expect(reachOf('deep-socket', head('slotted'), marked)?.grade).toBe('proper');
    expect(reachOf('shallow-socket', head('slotted'), marked)?.grade).toBe('proper');
    expect(reachOf('deep-socket', head('retain'), { slotted: false, retains: true })?.grade).toBe('proper');
    expect(reachOf('shallow-socket', head('retain'), { slotted: false, retains: true })).toBeNull();
    // It serves as any deep socket elsewhere.
    expect(reachOf('deep-socket', head('open'), { slotted: false, retains: true })?.grade).toBe('with-care');
    expect(reachOf('deep-socket', head('deep'), { slotted: false, retains: true })?.grade).toBe('proper');
  });

  it('[M2] note (a): open ends to 80 N m with care, last resort above, a grade worse on rust', () => {
    expect(grade('open-end', { torque: 80 })).toBe('with-care');
    expect(grade('open-end', { torque: 80.1 })).toBe('last-resort');
    expect(grade('open-end', { torque: 80, rusty: true })).toBe('last-resort');
    expect(grade('open-end', { torque: 81, rusty: true })).toBeNull();
    expect(grade('open-end', { torque: 200, rusty: true }, 'slotted')).toBe('with-care');
  });

  it('[M2] note (b): adjustable to 25 and 60 N m, parallel jaw to 60, then forbidden', () => {
    expect(grade('adjustable', { torque: 25 })).toBe('with-care');
    expect(grade('adjustable', { torque: 25.1 })).toBe('last-resort');
    expect(grade('adjustable', { torque: 60 })).toBe('last-resort');
    expect(grade('adjustable', { torque: 60.1 })).toBeNull();
    expect(grade('parallel-jaw', { torque: 60 })).toBe('with-care');
    expect(grade('parallel-jaw', { torque: 60.1 })).toBeNull();
  });

  it('[M2] note (c): locking pliers to 60, water-pump pliers to 20 N m, last resort, then forbidden', () => {
    expect(grade('locking-pliers', { torque: 60 })).toBe('last-resort');
    expect(grade('locking-pliers', { torque: 60.1 })).toBeNull();
    expect(grade('water-pump-pliers', { torque: 20 })).toBe('last-resort');
    expect(grade('water-pump-pliers', { torque: 20.1 })).toBeNull();
  });

  it('[M2] critical places forbid adjustable, parallel jaw and pliers, and nothing else', () => {
    for (const critical of ['wheel', 'brake', 'steering'] as const) {
      const allowed = FORMS.filter((form) => grade(form, { critical, torque: 5 }) !== null);
      expect(allowed).toEqual(['shallow-socket', 'deep-socket', 'ring', 'ratchet-ring', 'open-end']);
    }
    expect(grade('adjustable', { critical: 'support', torque: 5 })).toBe('with-care');
  });

  it('[M2] a bit reaches like a socket', () => {
    const seen = Object.keys(AT_20_NM).map((access) => {
      const reached = bitReachOf(access as Access);
      return [access, reached === null ? '-' : `${reached.grade} ${reached.reach}`];
    });
    expect(Object.fromEntries(seen)).toEqual({
      open: 'proper straight',
      deep: 'proper straight',
      recess: 'proper straight',
      side: '-',
      tight: 'with-care straight',
      remote: 'proper extended',
      angle: 'proper bent',
      slotted: '-',
      retain: '-',
    });
  });
});
