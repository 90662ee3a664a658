import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { changeBelonging } from '@waymend/garage/edit';
import { readGarage } from '@waymend/garage/file/read-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { catalogueView } from '@waymend/planner/views/catalogue-view';
import { describe, expect, it } from 'vitest';
import type { Choice, Order } from '../../src/places/garage/belongings/choose-rows.ts';
import { chooseRows, orderRows } from '../../src/places/garage/belongings/choose-rows.ts';
import { RowMaker } from '../../src/places/garage/belongings/rows.ts';
import { standingsOf } from '../../src/places/garage/belongings/standing.ts';
import { totalsOf } from '../../src/places/garage/belongings/totals.ts';

const LINES = new Map(catalogueView(BELONGINGS).lines.map((line) => [line.id, line]));

const FILE = `
waymend: 1
name: test
berths:
  drawer: { vehicle: ute, name: Drawer, xMm: 2500 }
vehicles:
  ute:
    name: Ute
    wheelbaseMm: 3000
    emptyFrontKg: 1000
    emptyRearKg: 900
    ratedFrontKg: 1400
    ratedRearKg: 1700
    ratedGrossKg: 3000
belongings:
  w8: { is: CW-8 }
  w10: { is: CW-10, copies: 2 }
  box: { name: Blue box, set: { caseGrams: 500 } }
  box-s17: { is: SK2-17, inside: box }
  box-s19: { is: SK2-19, inside: box, grams: 140, weighed: true }
  jack: { name: old jack, grams: 5200, weighed: true, berth: drawer, state: damaged }
  charm: { name: Lucky <b>charm</b> }
  deal: { is: CP-T, forSale: true, price: 120 }
`;

function garage(): Garage {
  const read = readGarage(FILE, 'test.yaml', { for: 'edit' });
  if (!read.ok) throw new Error(read.error.map(({ message }) => message).join('; '));
  return read.value;
}

const rowsOf = (from: Garage) => new RowMaker(LINES).rows(from);
const ALL: Choice = { shown: 'all', search: '', means: null, open: new Set() };
const lined = (
  choice: Partial<Choice>,
  order: Order = 'name',
  told: Parameters<typeof standingsOf>[0] = null,
) => chooseRows(orderRows(rowsOf(garage()), order), standingsOf(told), { ...ALL, ...choice });
const chosen = (choice: Partial<Choice>, told: Parameters<typeof standingsOf>[0] = null) =>
  lined(choice, 'name', told).map(({ row }) => row.id);

describe('rows of the belongings list', () => {
  it('name, size and mass come from the catalogue where the record says nothing', () => {
    const row = rowsOf(garage()).find(({ id }) => id === 'w10');
    expect(row).toMatchObject({ name: 'combination wrench', size: '10 mm', estimated: true });
    expect(row?.total).toBe(2 * (LINES.get('CW-10')?.grams ?? Number.NaN));
  });

  it('a set weighs its case and what is in it, and is estimated while a piece is', () => {
    const row = rowsOf(garage()).find(({ id }) => id === 'box');
    expect(row?.total).toBe(500 + 140 + (LINES.get('SK2-17')?.grams ?? Number.NaN));
    expect(row).toMatchObject({ contents: 2, estimated: true });
  });

  it('a thing of the owner’s own has no mass until somebody says it', () => {
    expect(rowsOf(garage()).find(({ id }) => id === 'charm')?.each).toBe(null);
  });

  it('keeps the order of the record', () => {
    expect(rowsOf(garage()).map(({ id }) => id)).toEqual(Object.keys(garage().belongings));
  });

  it('makes only what changed anew', () => {
    const maker = new RowMaker(LINES);
    const before = garage();
    const first = maker.rows(before);
    const changed = changeBelonging(before, 'w8', { grams: 61 });
    const second = maker.rows(changed.ok ? changed.value : before);
    const same = second.filter((row, i) => row === first[i]).map(({ id }) => id);
    expect(same).toEqual(['w10', 'box-s17', 'box-s19', 'jack', 'charm', 'deal']);
    expect(second.find(({ id }) => id === 'w8')?.each).toBe(61);
  });

  it('a renamed berth reaches every row that rides there', () => {
    const maker = new RowMaker(LINES);
    const before = garage();
    maker.rows(before);
    const drawer = before.berths['drawer'];
    if (drawer === undefined) throw new Error('no drawer');
    const rows = maker.rows({ ...before, berths: { drawer: { ...drawer, name: 'Long drawer' } } });
    expect(rows.find(({ id }) => id === 'jack')?.berth).toBe('Long drawer');
  });
});

describe('what the list shows', () => {
  it('orders names by the value of their numbers: 8 before 10', () => {
    const ids = chosen({});
    expect(ids.indexOf('w8')).toBeLessThan(ids.indexOf('w10'));
  });

  it('orders by the mass of all copies, heaviest first', () => {
    const grams = lined({}, 'mass').map(({ row }) => row.total);
    expect(grams).toEqual([...grams].sort((a, b) => b - a));
  });

  it('what has no berth stands after what has one', () => {
    expect(lined({}, 'berth')[0]?.row.id).toBe('jack');
  });

  it('pieces stand under their set only when it is open', () => {
    expect(chosen({})).not.toContain('box-s17');
    const ids = chosen({ open: new Set(['box']) });
    expect(ids.slice(ids.indexOf('box'), ids.indexOf('box') + 3)).toEqual(['box', 'box-s17', 'box-s19']);
  });

  it('a search finds pieces inside closed sets', () => {
    expect(chosen({ search: 'socket 17' })).toEqual(['box-s17']);
  });

  it('a search also shows what it means in other words', () => {
    expect(chosen({ search: 'spanner' })).toEqual([]);
    expect(chosen({ search: 'spanner', means: new Set(['CW-8', 'CW-10']) })).toEqual(['w8', 'w10']);
  });

  it('markup in a name is text like any other', () => {
    expect(chosen({ search: '<b>charm' })).toEqual(['charm']);
  });

  it('filters: not weighed leaves out sets and what is for sale', () => {
    expect(chosen({ shown: 'estimated' }).sort()).toEqual(['box-s17', 'charm', 'w10', 'w8']);
    expect(chosen({ shown: 'buy' })).toEqual(['deal']);
    expect(chosen({ shown: 'unready' })).toEqual(['jack']);
  });

  it('filters by what the plan says; some copies along is in both', () => {
    const item = {
      name: '',
      grams: 0,
      weighed: false,
      worth: 0,
      jobs: [],
      reason: 'worth',
      berth: null,
      bought: false,
    } as const;
    const told = {
      kit: {
        massGrams: 0,
        volumeMl: 0,
        estimatedGrams: 0,
        items: [
          { ...item, id: 'w8', copies: 1 },
          { ...item, id: 'w10', copies: 1 },
        ],
      },
      stayHome: [
        { id: 'w10', name: '', grams: 0, copies: 1, couldAdd: 0, perKilogram: 0, needs: [], why: 'double' },
        {
          id: 'jack',
          name: '',
          grams: 0,
          copies: 1,
          couldAdd: 0,
          perKilogram: 0,
          needs: [],
          why: 'not-ready',
        },
      ],
    } as const;
    expect(chosen({ shown: 'along' }, told)).toEqual(['w8', 'w10']);
    expect(chosen({ shown: 'home' }, told).sort()).toEqual(['jack', 'w10']);
    const w10 = garage().belongings['w10'];
    expect(w10 !== undefined && standingsOf(told)('w10', w10)).toEqual({ kind: 'some', copies: 1, of: 2 });
  });
});

describe('totals', () => {
  it('count copies and pieces, the case once, and nothing that is for sale', () => {
    const totals = totalsOf(rowsOf(garage()));
    const grams = (id: string): number => LINES.get(id)?.grams ?? Number.NaN;
    expect(totals.things).toBe(1 + 2 + 2 + 1 + 1);
    expect(totals.grams).toBe(grams('CW-8') + 2 * grams('CW-10') + 500 + grams('SK2-17') + 140 + 5200);
    expect(totals.estimated).toBe(grams('CW-8') + 2 * grams('CW-10') + grams('SK2-17'));
    expect(totals.noMass).toBe(1);
    expect(totals.forSale).toBe(1);
  });
});
