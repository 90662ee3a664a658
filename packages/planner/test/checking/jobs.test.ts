import { metres, newtonMetres } from '@waymend/core/quantity/units';
import type { FunctionNeed, ScenePiece, Together } from '@waymend/core/repairing/scene';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/checking/bench.ts';
import { functionMark } from '../../src/checking/functions.ts';
import { jobMarks, reachesHelp } from '../../src/checking/jobs.ts';
import { does, job, joint, mm, piece, scene, wrench } from './hand-made.ts';

const met = (need: FunctionNeed, pieces: readonly ScenePiece[], together: readonly Together[] = []) =>
  functionMark(layOut(pieces), need, together);

describe('functions', () => {
  it('[M2] a need without `of` takes any, a need with one takes only that', () => {
    const coolant = piece('tape', [does('seal', { of: 'coolant', grade: 'with-care' })]);
    const plain = piece('putty', [does('seal')]);
    expect(met({ fn: 'seal' }, [coolant])).toBe('with-care');
    expect(met({ fn: 'seal' }, [coolant, plain])).toBe('proper');
    expect(met({ fn: 'seal', of: 'coolant' }, [plain])).toBeNull();
    expect(met({ fn: 'seal', of: 'fuel' }, [coolant])).toBeNull();
  });

  it('[M2] what is offered must be at least what is asked; nothing said is nothing', () => {
    const jack = (kg?: number) => piece('jack', [does('lift', kg === undefined ? {} : { amount: kg })]);
    expect(met({ fn: 'lift', amount: 1800 }, [jack(1800)])).toBe('proper');
    expect(met({ fn: 'lift', amount: 1800 }, [jack(1799)])).toBeNull();
    expect(met({ fn: 'lift', amount: 1800 }, [jack()])).toBeNull();
    expect(met({ fn: 'lift', amount: 1800 }, [jack(1000), { ...jack(1000), id: 'second' }])).toBeNull();
  });

  it('[M2] counts add up over pieces, each piece by its best line', () => {
    const strap = (id: string) => piece(id, [does('restrain'), does('restrain', { of: 'light' })]);
    expect(met({ fn: 'restrain', count: 2 }, [strap('a')])).toBeNull();
    expect(met({ fn: 'restrain', count: 2 }, [strap('a'), strap('b')])).toBe('proper');
    const pair = piece('pair', [does('support', { pieces: 2, amount: 2000 })]);
    expect(met({ fn: 'support', count: 2, amount: 1500, safety: true }, [pair])).toBe('proper');
    const poor = piece('poor', [does('restrain', { grade: 'last-resort' })]);
    expect(met({ fn: 'restrain', count: 2 }, [strap('a'), poor])).toBe('last-resort');
  });

  it('[M2] fluids run together', () => {
    const bottle = (id: string) => piece(id, [does('fluid', { of: 'coolant', amount: 1 })]);
    expect(met({ fn: 'fluid', of: 'coolant', amount: 2 }, [bottle('a')])).toBeNull();
    expect(met({ fn: 'fluid', of: 'coolant', amount: 2 }, [bottle('a'), bottle('b')])).toBe('proper');
  });

  it('[M2] a row marked together adds a way made of several functions, at the worst grade of its parts', () => {
    const row: Together = {
      id: 'lash-and-pad',
      wanted: { fn: 'splint' },
      grade: 'with-care',
      needs: [{ fn: 'lash', of: 'strong' }, { fn: 'pad' }],
    };
    const strap = piece('strap', [does('lash', { of: 'strong' })]);
    const rag = piece('rag', [does('pad', { grade: 'last-resort' })]);
    expect(met({ fn: 'splint' }, [strap], [row])).toBeNull();
    expect(met({ fn: 'splint' }, [strap, piece('foam', [does('pad')])], [row])).toBe('with-care');
    expect(met({ fn: 'splint' }, [strap, rag], [row])).toBe('last-resort');
    expect(met({ fn: 'splint', of: 'wood' }, [strap, rag], [row])).toBeNull();
  });

  it('[M2] a row ends at its greatest amount, a tool begins at its least', () => {
    const row: Together = {
      id: 'spacers',
      wanted: { fn: 'lift', of: 'high' },
      grade: 'with-care',
      needs: [{ fn: 'lift', amount: 4000 }, { fn: 'lift-adapt' }],
      upTo: 4000,
    };
    const jack = piece('jack', [does('lift', { amount: 6000 })]);
    const spacers = piece('spacers', [does('lift-adapt')]);
    expect(met({ fn: 'lift', of: 'high', amount: 4000 }, [jack, spacers], [row])).toBe('with-care');
    expect(met({ fn: 'lift', of: 'high', amount: 4001 }, [jack, spacers], [row])).toBeNull();
    const click = piece('click', [does('torque-set', { amount: 200, from: 40 })]);
    expect(met({ fn: 'torque-set', amount: 39 }, [click])).toBeNull();
    expect(met({ fn: 'torque-set', amount: 40 }, [click])).toBe('proper');
    expect(met({ fn: 'torque-set' }, [click])).toBe('proper');
  });

  it('[M4] a jack is never a support, even if its entry says so, and no row makes one of it', () => {
    const need: FunctionNeed = { fn: 'support', amount: 1500, safety: true };
    const jack = piece('jack', [does('lift', { amount: 3000 }), does('support', { amount: 3000 })]);
    const row: Together = {
      id: 'jack-stand',
      wanted: { fn: 'support' },
      grade: 'proper',
      needs: [{ fn: 'lift' }, { fn: 'base' }],
    };
    const board = piece('board', [does('base')]);
    expect(met(need, [jack])).toBeNull();
    expect(met(need, [jack, board], [row])).toBeNull();
    expect(met(need, [jack, piece('stand', [does('support', { amount: 2000 })])])).toBe('proper');
  });

  it('[M4] what keeps people from harm is never left to a last resort', () => {
    const glasses = piece('sun glasses', [does('eyes', { grade: 'last-resort' })]);
    expect(met({ fn: 'eyes' }, [glasses])).toBeNull();
    expect(met({ fn: 'eyes' }, [glasses, piece('goggles', [does('eyes')])])).toBe('proper');
    const wheel = piece('wheel', [does('support', { amount: 3000, grade: 'last-resort' })]);
    expect(met({ fn: 'support', amount: 1000 }, [wheel])).toBeNull();
    expect(met({ fn: 'hands' }, [piece('rag', [does('hands', { grade: 'last-resort' })])])).toBe(
      'last-resort',
    );
    expect(
      met({ fn: 'hands', safety: true }, [piece('rag', [does('hands', { grade: 'last-resort' })])]),
    ).toBeNull();
  });
});

describe('jobs', () => {
  const bolt = joint({ id: 'bolt', torque: newtonMetres(40) });
  const ring = piece('ring', [wrench(0.4, ['ring', mm(17)])]);
  const repair = job('R', {
    needs: [
      { kind: 'turn', joint: 'bolt' },
      { kind: 'function', fn: 'pad' },
    ],
  });
  const mark = (change: Parameters<typeof job>[1], pieces: readonly ScenePiece[]) => {
    const world = scene({ joints: [bolt], jobs: [job('R', { ...repair, ...change })] });
    return jobMarks(world, layOut(pieces)).of(job('R', { ...repair, ...change }));
  };

  it('[M4] a job is as good as its worst need', () => {
    expect(mark({}, [ring])).toBeNull();
    expect(mark({}, [ring, piece('foam', [does('pad')])])).toBe('proper');
    expect(mark({}, [ring, piece('rag', [does('pad', { grade: 'last-resort' })])])).toBe('last-resort');
  });

  it('[M4] too few people, or nobody with the skill, put it out of reach', () => {
    const all = [ring, piece('foam', [does('pad')])];
    expect(mark({ people: 3 }, all)).toBeNull();
    expect(mark({ people: 2 }, all)).toBe('proper');
    expect(mark({ skill: 4 }, all)).toBeNull();
    expect(mark({ skill: 3 }, all)).toBe('proper');
  });

  it('[M4] a limp counts only if it is trusted as far as help; made safe counts nowhere', () => {
    const limp = job('L', { trusted: metres(50_000) });
    expect(reachesHelp(limp, 50_000)).toBe(true);
    expect(reachesHelp(limp, 50_001)).toBe(false);
    expect(reachesHelp(job('S', { trusted: metres(0) }), 0)).toBe(false);
  });
});
