import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import { describe, expect, it } from 'vitest';
import { catalogueView } from '../../src/views/catalogue-view.ts';
import { FUNCTION_GROUPS } from '../../src/views/function-groups.ts';

const VIEW = catalogueView(BELONGINGS);
const line = (id: string) => VIEW.lines.find((one) => one.id === id);

describe('the catalogue for leafing through', () => {
  it('shows every entry, each under at least one purpose that is listed', () => {
    expect(VIEW.lines).toHaveLength(BELONGINGS.length);
    const listed = new Set(VIEW.purposes.map(({ id }) => id));
    expect(VIEW.lines.filter(({ purposes }) => purposes.length === 0)).toEqual([]);
    expect(VIEW.lines.flatMap(({ purposes }) => purposes).filter((id) => !listed.has(id))).toEqual([]);
  });

  it('leaves no group empty and lists purposes in the order of the groups', () => {
    const groups = VIEW.purposes.map(({ group }) => group);
    expect([...new Set(groups)]).toEqual([...FUNCTION_GROUPS]);
  });

  it('[M3] a ring wrench turns and holds, a socket only turns, locking pliers hold', () => {
    expect(line('CW-17')?.purposes).toEqual(['nut', 'hold']);
    expect(line('SK2-17')?.purposes).toEqual(['nut']);
    expect(line('PR-L25')?.purposes).toContain('hold');
  });

  it('puts spares under the parts they replace', () => {
    expect(line('P-THERM')?.purposes).toContain('part');
  });

  it('adds up a box: pieces as shops count them, mass with its case', () => {
    const box = VIEW.sets.find(({ id }) => id === 'box-94');
    const source = BOXED_SETS.find(({ id }) => id === 'box-94');
    expect(box?.pieces).toBe(94);
    const inside = (source?.contents ?? []).reduce(
      (sum, { is, copies }) => sum + copies * (line(is)?.grams ?? Number.NaN),
      0,
    );
    expect(box?.grams).toBe(1500 + inside);
  });

  it('says what every mass stands on and keeps the guide price inside its band', () => {
    for (const { basis, cents, fromCents, toCents } of VIEW.lines) {
      expect(basis.length).toBeGreaterThan(10);
      expect(cents).toBeGreaterThanOrEqual(fromCents);
      expect(cents).toBeLessThanOrEqual(toCents ?? Number.POSITIVE_INFINITY);
    }
  });
});
