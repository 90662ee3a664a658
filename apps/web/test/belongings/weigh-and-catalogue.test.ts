import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { emptyGarage } from '@waymend/garage/log/empty-garage';
import type { Belonging } from '@waymend/garage/record/schema';
import { catalogueView } from '@waymend/planner/views/catalogue-view';
import { describe, expect, it } from 'vitest';
import { rowRange } from '../../src/look/window-range.ts';
import { BARE } from '../../src/places/garage/belongings/add-all.ts';
import { ownedOf } from '../../src/places/garage/belongings/catalogue/owned.ts';
import { pickLines } from '../../src/places/garage/belongings/catalogue/pick-lines.ts';
import { tooLarge } from '../../src/places/garage/belongings/file-limit.ts';
import { gramsOf } from '../../src/places/garage/belongings/mass-units.ts';
import { RowMaker } from '../../src/places/garage/belongings/rows.ts';
import { catalogueOf } from '../../src/places/garage/belongings/use-catalogue.ts';
import { weighQueue } from '../../src/places/garage/belongings/weigh/queue.ts';
import type { Key } from '../../src/places/garage/belongings/weigh/reading.ts';
import { readingIn, typed } from '../../src/places/garage/belongings/weigh/reading.ts';
import { fileName } from '../../src/places/garage/record/save-file.ts';

const CATALOGUE = catalogueOf(catalogueView(BELONGINGS));
const grams = (id: string): number => CATALOGUE.byId.get(id)?.grams ?? Number.NaN;

function queueOf(belongings: Readonly<Record<string, Belonging>>, passed: readonly string[] = []) {
  return weighQueue(new RowMaker(CATALOGUE.byId).rows({ ...emptyGarage(), belongings }), passed);
}

const OWNED = {
  small: { ...BARE, is: 'CW-8' },
  large: { ...BARE, is: 'CW-19' },
  three: { ...BARE, is: 'CW-10', copies: 3 },
  done: { ...BARE, is: 'CW-13', grams: 90, weighed: true },
  own: { ...BARE, name: 'lucky charm' },
  wanted: { ...BARE, is: 'CP-T', forSale: true },
  box: { ...BARE, name: 'box', set: { carry: 'loose', caseGrams: 400 } },
} as const;

describe('what is weighed next', () => {
  it('is what has no mass at all, then the heaviest guess, copies together', () => {
    expect(queueOf(OWNED).rows.map(({ id }) => id)).toEqual([
      'own',
      ...['small', 'large', 'three'].sort((a, b) => mass(b) - mass(a)),
    ]);
    function mass(id: string): number {
      return { small: grams('CW-8'), large: grams('CW-19'), three: 3 * grams('CW-10') }[id] ?? 0;
    }
  });

  it('leaves out what is weighed, what is for sale, and boxes, which are weighed piece by piece', () => {
    const queue = queueOf(OWNED);
    expect(queue.rows.map(({ id }) => id)).not.toEqual(expect.arrayContaining(['done']));
    expect(queue).toMatchObject({ weighed: 90, weighedThings: 1, things: 5 });
    expect(queue.estimated).toBe(grams('CW-8') + grams('CW-19') + 3 * grams('CW-10'));
  });

  it('puts off what was passed over, in the order it was passed over', () => {
    const ids = queueOf(OWNED, ['own', 'large']).rows.map(({ id }) => id);
    expect(ids.slice(-2)).toEqual(['own', 'large']);
  });
});

describe('the number pad', () => {
  const press = (keys: readonly Key[], unit: 'g' | 'oz'): string =>
    keys.reduce((display, key) => typed(display, key, unit), '');

  it('types grams without a point and ounces to a tenth', () => {
    expect(press(['4', '1', '0'], 'g')).toBe('410');
    expect(press(['4', '.', '1'], 'g')).toBe('41');
    expect(press(['4', '.', '1', '7'], 'oz')).toBe('4.1');
    expect(press(['.', '5'], 'oz')).toBe('0.5');
  });

  it('takes back digits, drops a leading nought, and stops at six digits', () => {
    expect(press(['4', '1', 'back'], 'g')).toBe('4');
    expect(press(['0', '7'], 'g')).toBe('7');
    expect(press(['1', '2', '3', '4', '5', '6', '7'], 'g')).toBe('123456');
  });

  it('reads nothing where there is no mass', () => {
    expect([readingIn(''), readingIn('0'), readingIn('0.')]).toEqual([null, null, null]);
    expect(readingIn('410')).toBe(410);
  });

  it('an ounce is 28.349523125 g exactly (international pound, 1959)', () => {
    expect(gramsOf(10, 'oz')).toBe(283);
    expect(gramsOf(410, 'g')).toBe(410);
  });
});

describe('leafing through the catalogue', () => {
  const leaf = { group: '', purpose: '', search: '' };

  it('shows everything, or only a group, or only a purpose', () => {
    expect(pickLines(CATALOGUE, leaf, [])).toHaveLength(BELONGINGS.length);
    const lifts = pickLines(CATALOGUE, { ...leaf, group: 'lift' }, []);
    const jacks = pickLines(CATALOGUE, { ...leaf, group: 'lift', purpose: 'lift' }, []);
    expect(jacks.length).toBeGreaterThan(3);
    expect(lifts.length).toBeGreaterThan(jacks.length);
    expect(jacks.every(({ purposes }) => purposes.includes('lift'))).toBe(true);
  });

  it('searched, keeps the order of what was found and stays within the group', () => {
    const found = ['RT-2', 'CW-17', 'CW-8'];
    expect(pickLines(CATALOGUE, { ...leaf, search: 'x' }, found).map(({ id }) => id)).toEqual(found);
    expect(pickLines(CATALOGUE, { ...leaf, group: 'hold', search: 'x' }, found).map(({ id }) => id)).toEqual([
      'CW-17',
      'CW-8',
    ]);
  });

  it('counts what is owned, and pieces of a set that is only wanted as wanted', () => {
    const owned = ownedOf({
      a: { ...BARE, is: 'CW-8', copies: 2 },
      b: { ...BARE, is: 'CW-8', forSale: true },
      box: { ...BARE, name: 'box', forSale: true, set: { carry: 'loose', caseGrams: 0 } },
      c: { ...BARE, is: 'CW-10', inside: 'box' },
    });
    expect(owned.get('CW-8')).toEqual({ have: 2, wanted: 1 });
    expect(owned.get('CW-10')).toEqual({ have: 0, wanted: 1 });
  });
});

describe('rows in sight', () => {
  it('cover what can be seen, with some to spare, and nothing else', () => {
    const range = rowRange(-6400, 800, 64, 20_000);
    expect(range.from).toBeLessThanOrEqual(100);
    expect(range.to).toBeGreaterThanOrEqual(113);
    expect(range.to - range.from).toBeLessThan(40);
  });
  it('start at the top and end at the last row', () => {
    expect(rowRange(500, 800, 64, 20_000).from).toBe(0);
    expect(rowRange(-64 * 19_995, 800, 64, 20_000).to).toBe(20_000);
    expect(rowRange(0, 800, 64, 3)).toEqual({ from: 0, to: 3 });
    expect(rowRange(0, 800, 64, 0)).toEqual({ from: 0, to: 0 });
  });
  it('stand still while a few pixels are scrolled', () => {
    expect(rowRange(-6401, 800, 64, 500)).toEqual(rowRange(-6420, 800, 64, 500));
  });
});

describe('files', () => {
  it('too large to be a list are refused by their size alone', () => {
    expect(tooLarge({ name: 'x.csv', size: 100_000_000 })).toEqual({ name: 'x.csv', size: 100 });
    expect(tooLarge({ name: 'x.csv', size: 20_000_000 })).toBe(null);
  });
  it('are named after the garage and the day, safe on every system', () => {
    const day = new Date(2026, 10, 5);
    expect(fileName('Old Bess & trailer', day, 'garage')).toBe('old-bess-trailer-2026-11-05');
    expect(fileName('../../etc/passwd', day, 'garage')).toBe('etc-passwd-2026-11-05');
    expect(fileName('\u{1F699}', day, 'garage')).toBe('garage-2026-11-05');
    expect(fileName('Stra\u00dfe \u00e9t\u00e9', day, 'garage')).toBe('stra-e-ete-2026-11-05');
  });
});
