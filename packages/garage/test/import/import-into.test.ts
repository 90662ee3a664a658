import { describe, expect, it } from 'vitest';
import { carrySet, changeBelonging, contentsOf, removeBelonging, takeOutOfSet } from '../../src/edit.ts';
import { readGarage } from '../../src/file/read-garage.ts';
import { writeGarage } from '../../src/file/write-garage.ts';
import { exportCsv } from '../../src/import/export-csv.ts';
import { importInto } from '../../src/import/import-into.ts';
import { addAsOwnThing } from '../../src/import/own-thing.ts';
import { readTable } from '../../src/import/read-table.ts';
import type { Garage } from '../../src/record/schema.ts';
import { SMALL } from '../small-garage.ts';
import { read, said } from './said.ts';

const MORE = `${SMALL}
berths:
  d1: { vehicle: ute, name: Drawer, xMm: 2500 }
bags:
  roll: { name: Blue roll }
`;

function garage(): Garage {
  const result = readGarage(MORE, 'small.yaml');
  if (!result.ok) throw new Error(result.error.map(({ message }) => message).join());
  return result.value;
}

function imported(text: string, into = garage()) {
  return importInto(into, read(text).matches);
}

describe('importing into a garage', () => {
  it('adds belongings under ids made from what they are, and overwrites nothing', () => {
    const before = garage();
    const { garage: after, added } = imported(
      '3/8 drive sockets 10 12\n25 mm combination wrench\n3/8 ratchet 180 g (old)',
      before,
    );
    expect(added).toEqual(['sk3-10', 'sk3-12', 'cw-24-25-mm', 'rt-3']);
    expect(after.belongings['s10']).toEqual(before.belongings['s10']);
    expect(after.belongings['rt-3']).toMatchObject({
      is: 'RT-3',
      grams: 180,
      weighed: true,
      note: 'old',
      line: '3/8 ratchet 180 g (old)',
    });
    expect(Object.keys(before.belongings)).toEqual(['s10']);
  });

  it('gives the same ids for the same list, and new ones when it is imported again', () => {
    const first = imported('multimeter\nmultimeter');
    expect(first.added).toEqual(['mm-1', 'mm-1-2']);
    expect(imported('multimeter\nmultimeter').garage).toEqual(first.garage);
    const again = imported('multimeter', first.garage);
    expect(again.added).toEqual(['mm-1-3']);
    expect(again.repeated).toHaveLength(1);
    expect(first.repeated).toHaveLength(0);
  });

  it('uses the id maker it is given', () => {
    let n = 0;
    const { added } = importInto(garage(), read('multimeter\nwire brush').matches, {
      makeId: () => `x${++n}`,
    });
    expect(added).toEqual(['x1', 'x2']);
  });

  it('writes a garage that reads back, an own size included', () => {
    const { garage: after } = imported('25 mm combination wrench\n94 piece socket set\n2x locking pliers');
    expect(readGarage(writeGarage(after), 'again.yaml')).toEqual({ ok: true, value: after });
  });

  it('puts things where the table says, by name of bag or berth, else into the note', () => {
    const reading = readTable('name;location\nmultimeter;blue roll\nwire brush;drawer\nhacksaw;shed');
    if (!reading.ok) throw new Error('refused');
    const { belongings } = importInto(garage(), reading.value.matches).garage;
    expect(belongings['mm-1']?.bag).toBe('roll');
    expect(belongings['wb-s']?.berth).toBe('d1');
    expect(belongings['sw-hf']?.note).toBe('kept in: shed');
  });

  it('leaves a mass out that is absurd for its kind, says so, and takes it once it is confirmed', () => {
    const matches = read('1/2 drive socket 19 mm 40 kg\nwire brush').matches;
    const asked = importInto(garage(), matches);
    expect(asked.unbelieved.map(({ match, sentence }) => [match.line, sentence])).toEqual([
      [
        1,
        'shallow socket, six-point weighs 40 kg where about 90 g is usual; the mass is left out until you confirm it',
      ],
    ]);
    expect(asked.garage.belongings['sk2-19']?.grams).toBeUndefined();
    expect(asked.garage.belongings['sk2-19']?.weighed).toBe(false);
    // What is written reads back without a question.
    expect(readGarage(writeGarage(asked.garage), 'x.yaml')).toEqual({ ok: true, value: asked.garage });
    const sure = importInto(garage(), matches, { confirmMasses: true });
    expect(sure.unbelieved).toEqual([]);
    expect(sure.garage.belongings['sk2-19']).toMatchObject({ grams: 40_000, weighed: true, confirmed: true });
    expect(readGarage(writeGarage(sure.garage), 'x.yaml').ok).toBe(true);
  });

  it('never takes what nothing weighs, and believes what only varies', () => {
    const tonnes = importInto(garage(), read('bottle jack 4t 4000 kg').matches, { confirmMasses: true });
    expect(tonnes.unbelieved).toHaveLength(1);
    expect(tonnes.garage.belongings['jb-4']?.grams).toBeUndefined();
    const heavy = importInto(garage(), read('1/2 ratchet 780 g\n10 mm socket 3/8 60 g').matches);
    expect(heavy.unbelieved).toEqual([]);
    expect(Object.values(heavy.garage.belongings).map((b) => b.grams)).toEqual(
      expect.arrayContaining([780, 60]),
    );
  });
});

describe('a boxed set', () => {
  it('is one belonging with its contents inside, opened up, and carried in part', () => {
    const { garage: after } = imported('94 piece socket set');
    expect(after.belongings['box-94']).toMatchObject({ set: { carry: 'loose', caseGrams: 1500 } });
    const inside = contentsOf(after, 'box-94');
    expect(inside.length).toBeGreaterThan(40);
    expect(after.belongings['box-94-sk2-17']).toMatchObject({ is: 'SK2-17', inside: 'box-94' });

    const whole = carrySet(after, 'box-94', 'whole');
    expect(whole.ok && whole.value.belongings['box-94']?.set?.carry).toBe('whole');
    const pinned = changeBelonging(after, 'box-94-sk4-4', { pin: 'never' });
    expect(pinned.ok && pinned.value.belongings['box-94-sk4-4']?.pin).toBe('never');
    const out = takeOutOfSet(after, 'box-94-sk2-17');
    expect(out.ok && out.value.belongings['box-94-sk2-17']).not.toHaveProperty('inside');
    const gone = removeBelonging(after, 'box-94');
    expect(gone.ok && Object.keys(gone.value.belongings)).toEqual(['s10']);
  });

  it('refuses to carry whole what is no set, and ids that are not there', () => {
    expect(carrySet(garage(), 's10', 'whole')).toMatchObject({ ok: false, error: { id: 'not-a-set' } });
    for (const change of [removeBelonging, takeOutOfSet]) {
      expect(change(garage(), 'nope')).toMatchObject({ ok: false, error: { id: 'belonging-unknown' } });
    }
    expect(changeBelonging(garage(), '__proto__', {})).toMatchObject({ ok: false });
  });
});

describe('an own thing', () => {
  it('is counted although it is not understood', () => {
    const [line] = read('wibble').notUnderstood;
    const { garage: after, id } = addAsOwnThing(garage(), line ?? { text: '' }, 300);
    expect(id).toBe('wibble');
    expect(after.belongings['wibble']).toMatchObject({ name: 'wibble', grams: 300, line: 'wibble' });
    expect(after.belongings['wibble']).not.toHaveProperty('is');
  });
});

describe('writing CSV', () => {
  it('keeps a table program from computing what somebody typed', () => {
    const own = addAsOwnThing(garage(), { text: '=cmd|calc' }).garage;
    const noted = changeBelonging(own, 's10', { note: '@SUM(1)' });
    if (!noted.ok) throw new Error('refused');
    const csv = exportCsv(noted.value);
    expect(csv).toContain("'=cmd|calc");
    expect(csv).toContain("'@SUM(1)");
    expect(csv.split(/[\n,]/).filter((cell) => /^"?[=@+]/.test(cell))).toEqual([]);
  });

  it('is read back as the same things', () => {
    const { garage: after } = imported('1/2 deep sockets 17 19\nlocking pliers 180 x2\nmultimeter');
    for (const mark of [',', ';'] as const) {
      const reading = readTable(exportCsv(after, mark));
      expect(reading.ok && said(reading.value)).toBe('SK3-10, SD2-17, SD2-19, 2 PR-L18, MM-1');
    }
  });
});
