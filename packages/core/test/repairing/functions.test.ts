import { describe, expect, it } from 'vitest';
import type { Together } from '../../src/repairing/scene.ts';
import { does, functionGrade, piece } from './hand-made.ts';

describe('[M2] other functions', () => {
  it('[M2] are met at the grade the list says, with at least the amount asked', () => {
    const weak = piece('weak', [does('lift', { amount: 1500 })]);
    const strong = piece('strong', [does('lift', { amount: 2000, grade: 'with-care' })]);
    expect(functionGrade({ fn: 'lift', amount: 1500 }, [weak])).toBe('proper');
    expect(functionGrade({ fn: 'lift', amount: 1501 }, [weak])).toBeNull();
    expect(functionGrade({ fn: 'lift', amount: 1501 }, [weak, strong])).toBe('with-care');
    expect(functionGrade({ fn: 'lift', amount: 3000 }, [weak, strong])).toBeNull();
    expect(functionGrade({ fn: 'lift', amount: 1 }, [piece('x', [does('lift')])])).toBeNull();
  });

  it('[M2] a named `of` is met by the same only, no `of` by any', () => {
    const coolant = piece('tape', [does('seal', { of: 'coolant' })]);
    const plain = piece('putty', [does('seal')]);
    expect(functionGrade({ fn: 'seal', of: 'coolant' }, [coolant])).toBe('proper');
    expect(functionGrade({ fn: 'seal', of: 'coolant' }, [plain])).toBeNull();
    expect(functionGrade({ fn: 'seal', of: 'fuel' }, [coolant])).toBeNull();
    expect(functionGrade({ fn: 'seal' }, [coolant])).toBe('proper');
    expect(functionGrade({ fn: 'seal' }, [plain])).toBe('proper');
  });

  it('[M2] several at once are several pieces, or one that holds several', () => {
    const lever = (id: string) => piece(id, [does('lever-tyre')]);
    const stands = piece('pair', [does('support', { amount: 1200, pieces: 2 })]);
    const stand = (id: string) => piece(id, [does('support', { amount: 1200 })]);
    expect(functionGrade({ fn: 'lever-tyre', count: 2 }, [lever('a')])).toBeNull();
    expect(functionGrade({ fn: 'lever-tyre', count: 2 }, [lever('a'), lever('b')])).toBe('proper');
    expect(functionGrade({ fn: 'support', amount: 1100, count: 2 }, [stands])).toBe('proper');
    expect(functionGrade({ fn: 'support', amount: 1100, count: 3 }, [stands])).toBeNull();
    expect(functionGrade({ fn: 'support', amount: 1100, count: 3 }, [stands, stand('s')])).toBe('proper');
    // Two lines of one piece are still one piece.
    const twice = piece('twice', [does('lever-tyre'), does('lever-tyre', { of: 'long' })]);
    expect(functionGrade({ fn: 'lever-tyre', count: 2 }, [twice])).toBeNull();
  });

  it('[M2] two small stands do not make a big one, two bottles do', () => {
    const small = (id: string) => piece(id, [does('support', { amount: 600 })]);
    expect(functionGrade({ fn: 'support', amount: 1100 }, [small('a'), small('b')])).toBeNull();
    const bottle = (id: string, litres: number) =>
      piece(id, [does('fluid', { of: 'brake', amount: litres })]);
    expect(functionGrade({ fn: 'fluid', of: 'brake', amount: 1 }, [bottle('a', 0.5)])).toBeNull();
    expect(functionGrade({ fn: 'fluid', of: 'brake', amount: 1 }, [bottle('a', 0.5), bottle('b', 0.5)])).toBe(
      'proper',
    );
    expect(functionGrade({ fn: 'fluid', of: 'brake' }, [bottle('a', 0.2)])).toBe('proper');
  });

  const chisel: Together = {
    id: 'cut-chisel',
    wanted: { fn: 'cut-metal', of: 'slow' },
    grade: 'last-resort',
    needs: [{ fn: 'chisel' }, { fn: 'strike-hard' }],
  };
  const tools = [piece('chisel', [does('chisel')]), piece('hammer', [does('strike-hard')])];

  it('[M2] rows marked together add ways made of several functions', () => {
    expect(functionGrade({ fn: 'cut-metal', of: 'slow' }, tools)).toBeNull();
    expect(functionGrade({ fn: 'cut-metal', of: 'slow' }, tools, [chisel])).toBe('last-resort');
    expect(functionGrade({ fn: 'cut-metal', of: 'slow' }, tools.slice(1), [chisel])).toBeNull();
    expect(functionGrade({ fn: 'cut-metal' }, tools, [chisel])).toBe('last-resort');
    expect(functionGrade({ fn: 'cut-metal', of: 'fast' }, tools, [chisel])).toBeNull();
    // A row stands in for one of a thing, not for two.
    expect(functionGrade({ fn: 'cut-metal', count: 2 }, tools, [chisel])).toBeNull();
  });

  it('[M2] a row stands in for no more than it says', () => {
    // Common practice, no source: heavy wire with a main fuse in it to 40 A.
    const wire: Together = {
      id: 'bridge-heavy',
      wanted: { fn: 'bridge-circuit' },
      grade: 'with-care',
      needs: [{ fn: 'splice-wire' }, { fn: 'fuse' }],
      upTo: 40,
    };
    const parts = [piece('wire', [does('splice-wire')]), piece('fuse', [does('fuse')])];
    expect(functionGrade({ fn: 'bridge-circuit', amount: 40 }, parts, [wire])).toBe('with-care');
    expect(functionGrade({ fn: 'bridge-circuit' }, parts, [wire])).toBe('with-care');
    expect(functionGrade({ fn: 'bridge-circuit', amount: 40.5 }, parts, [wire])).toBeNull();
  });

  it('[M2] below the lower end of its range a tool gives nothing, at it everything', () => {
    const click = [piece('click', [does('torque-set', { amount: 200, from: 40 })])];
    expect(functionGrade({ fn: 'torque-set', amount: 9 }, click)).toBeNull();
    expect(functionGrade({ fn: 'torque-set', amount: 39.9 }, click)).toBeNull();
    expect(functionGrade({ fn: 'torque-set', amount: 40 }, click)).toBe('proper');
    expect(functionGrade({ fn: 'torque-set', amount: 200 }, click)).toBe('proper');
    expect(functionGrade({ fn: 'torque-set', amount: 201 }, click)).toBeNull();
    // Where no figure is asked any torque wrench will do.
    expect(functionGrade({ fn: 'torque-set' }, click)).toBe('proper');
    const small = piece('small', [does('torque-set', { amount: 60, from: 10, grade: 'with-care' })]);
    expect(functionGrade({ fn: 'torque-set', amount: 20 }, [...click, small])).toBe('with-care');
  });

  it('[M2] a row is as good as the worst of its functions, and never better than itself', () => {
    const row: Together = { ...chisel, grade: 'with-care' };
    const poor = [piece('chisel', [does('chisel', { grade: 'last-resort' })]), ...tools.slice(1)];
    expect(functionGrade({ fn: 'cut-metal' }, tools, [row])).toBe('with-care');
    expect(functionGrade({ fn: 'cut-metal' }, poor, [row])).toBe('last-resort');
  });

  it('[M2] a row asks for direct offers: rows do not build on rows', () => {
    const onTop: Together = {
      id: 'r',
      wanted: { fn: 'cut-tube' },
      grade: 'with-care',
      needs: [{ fn: 'cut-metal' }],
    };
    expect(functionGrade({ fn: 'cut-tube' }, tools, [chisel, onTop])).toBeNull();
  });
});

describe('[M4] safety', () => {
  it('[M4] support and eyes are never met by a last resort, nor is what a job marks as safety', () => {
    const poor = (fn: string) => [piece('p', [does(fn, { grade: 'last-resort' })])];
    expect(functionGrade({ fn: 'support' }, poor('support'))).toBeNull();
    expect(functionGrade({ fn: 'eyes' }, poor('eyes'))).toBeNull();
    expect(functionGrade({ fn: 'fire', safety: true }, poor('fire'))).toBeNull();
    expect(functionGrade({ fn: 'fire' }, poor('fire'))).toBe('last-resort');
    const row: Together = {
      id: 'r',
      wanted: { fn: 'support' },
      grade: 'last-resort',
      needs: [{ fn: 'base' }],
    };
    expect(functionGrade({ fn: 'support' }, [piece('b', [does('base')])], [row])).toBeNull();
    expect(
      functionGrade({ fn: 'support' }, [piece('b', [does('base')])], [{ ...row, grade: 'with-care' }]),
    ).toBe('with-care');
  });

  it('[M4] no jack ever gives support, whatever its list says', () => {
    // Crush deaths under vehicles held by a jack alone are why: it is lifting gear, not a support.
    const jack = piece('jack', [does('lift', { amount: 2000 }), does('support', { amount: 2000 })]);
    expect(functionGrade({ fn: 'support', amount: 1000 }, [jack])).toBeNull();
    const row: Together = {
      id: 'r',
      wanted: { fn: 'support' },
      grade: 'with-care',
      needs: [{ fn: 'lift' }, { fn: 'base' }],
    };
    expect(functionGrade({ fn: 'support' }, [jack, piece('b', [does('base')])], [row])).toBeNull();
  });
});
