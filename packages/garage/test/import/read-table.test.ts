import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSpreadsheet } from '../../src/import/read-spreadsheet.ts';
import { looksLikeTable, readTable } from '../../src/import/read-table.ts';
import type { ImportReading } from '../../src/import/reading.ts';
import { containing, said } from './said.ts';
import { sheetParts, zip } from './zip.ts';
import { spent } from '../processor-time.ts';

function table(text: string): ImportReading {
  const reading = readTable(text, { name: 'tools.csv' });
  if (!reading.ok) throw new Error(reading.error.message);
  return reading.value;
}

const things = (reading: ImportReading) => reading.matches.map(({ kind: _, text: __, ...match }) => match);

describe('tables', () => {
  it.each([
    ['name,qty,size,drive\nsocket,2,17,1/2\ncombination wrench,1,13 mm,', '2 SK2-17, CW-13'],
    ['drive;size;name;qty\n1/2;17;socket;2\n;13 mm;combination wrench;1', '2 SK2-17, CW-13'],
    ['qty\tname\n3\tlocking pliers 180 mm\n1\tmultimeter', '3 PR-L18, MM-1'],
    ['Anzahl;Bezeichnung;Gewicht (kg);Antrieb\n2;socket 5,5 mm;0,013;1/4', '2 SK4-5.5'],
    ['Antrieb;Item;Size\n12,5 mm;deep socket;19', 'SD2-19'],
    ['Nom,Nombre\nmultimeter,2', '2 MM-1'],
    ['Nombre,Cantidad\nmultimeter,2', '2 MM-1'],
    ['multimeter,2\nlocking pliers 180,1\nwire brush,3', '2 MM-1, PR-L18, 3 WB-S'],
    ['"item","note"\n"pliers, long nose","said ""good"""', 'PR-LN'],
    ['name\nmultimeter\n\nwire brush', 'MM-1, WB-S'],
  ])('%j', (text, expected) => {
    expect(said(table(text))).toBe(expected);
  });

  it.each([
    ['weight (g)', '180', 180],
    ['weight in kg', '0,18', 180],
    ['Gewicht [g]', '1.180,0', 1180],
    ['mass', '180 g', 180],
    ['mass', '0.4 lb', 181],
    ['peso (kg)', '0.18', 180],
  ])('reads a mass under "%s": %s', (heading, mass, grams) => {
    const [match] = table(`name;${heading}\n3/8 ratchet;${mass}`).matches;
    expect(match).toMatchObject({ catalogueId: 'RT-3', grams, weighed: true });
  });

  it('says what it took a mass without a unit for', () => {
    const [kilograms, grams] = table('name;weight\n1/2 ratchet;0,6\n1/2 ratchet;600').matches;
    expect(kilograms).toMatchObject({ grams: 600, why: containing('kilograms') });
    expect(grams).toMatchObject({ grams: 600, why: containing('grams') });
  });

  it('reads price, place and note', () => {
    expect(things(table('item;price;location;remarks\nmultimeter;€ 29,90;drawer;works'))).toEqual([
      expect.objectContaining({
        catalogueId: 'MM-1',
        price: 29.9,
        location: 'drawer',
        note: 'works',
        line: 2,
      }),
    ]);
  });

  it('lists every row it does not understand, with its line', () => {
    const { notUnderstood } = table(
      'name,qty\nzorgblatt,1\nmultimeter,many\n,2\nmultimeter,0\n"two\nlines",1\nwibble,1',
    );
    expect(notUnderstood.map(({ line, text }) => `${line} ${text.replace('\n', '/')}`)).toEqual([
      '2 zorgblatt | 1',
      '3 multimeter | many',
      '4 2',
      '5 multimeter | 0',
      '6 two/lines | 1',
      '8 wibble | 1',
    ]);
  });

  it('tells tables from typed lists', () => {
    expect(looksLikeTable('name;qty\nmultimeter;1')).toBe(true);
    expect(looksLikeTable('item,count\nmultimeter,1\npliers,2')).toBe(true);
    expect(looksLikeTable('1/2 deep sockets 17, 19, 21\nside cutters\npliers, good ones')).toBe(false);
    expect(looksLikeTable('')).toBe(false);
  });

  it('keeps formulas as text', () => {
    const { matches, notUnderstood } = table('name,note\nmultimeter,=HYPERLINK("x")\n=1+1,x\n\'=2+2,y');
    expect(matches[0]?.note).toBe('=HYPERLINK("x")');
    expect(notUnderstood.map(({ text }) => text)).toEqual(['=1+1 | x', '=2+2 | y']);
  });

  it('never throws and loses no row', () => {
    const cell = fc.constantFrom(
      'name',
      'qty',
      'multimeter',
      '17',
      '-1',
      '1e9',
      '"',
      ';',
      ',',
      '\t',
      '=1+1',
      '__proto__',
      '2,5',
      '',
    );
    const text = fc.array(
      fc.array(cell, { maxLength: 5 }).map((cells) => cells.join(';')),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(text, (rows) => {
        expect(typeof readTable(rows.join('\n')).ok).toBe('boolean');
      }),
      { numRuns: 300 },
    );
  });
});

describe('spreadsheets', () => {
  const rows = [
    ['Qty', 'Item', 'Size', 'Weight (kg)'],
    [2, 'deep socket 1/2 drive', 17, 0.14],
    [1, 'multimeter', '', ''],
  ];

  it('reads the first sheet', async () => {
    const reading = await readSpreadsheet(zip(sheetParts(rows)), { name: 'tools.xlsx' });
    expect(reading.ok && said(reading.value)).toBe('2 SD2-17, MM-1');
    expect(reading.ok && reading.value.matches[0]).toMatchObject({ grams: 140, line: 2 });
  });

  it('never computes a formula: a cell is what the file says it showed', async () => {
    const formula = [
      ['Qty', 'Item'],
      [{ raw: '<f>1+1</f><v>7</v>' }, 'multimeter'],
      [1, { raw: '<f>CMD()</f><v>pliers</v>', type: 'str' }],
    ];
    const reading = await readSpreadsheet(zip(sheetParts(formula)), {});
    expect(reading.ok && said(reading.value)).toBe('7 MM-1, PR-CO');
  });

  it('says so when the spreadsheet made a date of a range', async () => {
    const dated = [
      ['Item', 'Size'],
      ['socket 3/8 drive', { raw: '<v>45000</v>', style: 1 }],
    ];
    const reading = await readSpreadsheet(zip(sheetParts(dated)), {});
    expect(reading.ok && reading.value.notUnderstood[0]?.reason).toContain('made a date');
  });

  const idOf = async (bytes: Uint8Array): Promise<string> => {
    const reading = await readSpreadsheet(bytes, { name: 'x.xlsx' });
    return reading.ok ? 'read' : reading.error.id;
  };

  it('refuses a zip bomb before it is unpacked', async () => {
    const bomb = zip({ ...sheetParts(rows), 'xl/worksheets/sheet2.xml': new Uint8Array(80_000_000) });
    expect(bomb.length).toBeLessThan(200_000);
    const start = spent();
    expect(await idOf(bomb)).toBe('spreadsheet-too-large');
    expect(spent() - start).toBeLessThan(500);
  });

  it('refuses one that understates what it holds', async () => {
    const lie = zip(
      { ...sheetParts(rows), 'xl/worksheets/sheet2.xml': new Uint8Array(80_000_000) },
      { 'xl/worksheets/sheet2.xml': 1000 },
    );
    const start = spent();
    expect(await idOf(lie)).toBe('spreadsheet-too-large');
    expect(spent() - start).toBeLessThan(2_000);
  });

  it('refuses what is no spreadsheet', async () => {
    const good = zip(sheetParts(rows));
    expect(await idOf(Uint8Array.from([]))).toBe('spreadsheet-broken');
    expect(await idOf(new TextEncoder().encode('name,qty'))).toBe('spreadsheet-broken');
    expect(await idOf(good.subarray(0, good.length - 30))).toBe('spreadsheet-broken');
    expect(await idOf(zip({ 'hello.txt': 'hello' }))).toBe('spreadsheet-broken');
    expect(await idOf(new Uint8Array(6_000_000))).toBe('file-too-large');
  });

  it('refuses cut and changed files without throwing', async () => {
    const good = zip(sheetParts(rows));
    await fc.assert(
      fc.asyncProperty(fc.nat(good.length - 1), fc.nat(255), fc.boolean(), async (at, byte, cut) => {
        const bytes = Uint8Array.from(cut ? good.subarray(0, at) : good);
        if (!cut) bytes[at] = byte;
        expect(typeof (await idOf(bytes))).toBe('string');
      }),
      { numRuns: 60 },
    );
  });
});
