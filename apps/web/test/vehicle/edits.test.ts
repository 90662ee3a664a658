import { readFileSync } from 'node:fs';
import { readGarage } from '@waymend/garage/file/read-garage';
import { garageFile } from '@waymend/garage/record/schema';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { fittingList } from '@waymend/planner/views/fitting-list';
import { describe, expect, it } from 'vitest';
import {
  addPlace,
  alwaysBring,
  changeVehicle,
  fittingId,
  moveTo,
  putOnBuyingList,
  removeBerth,
  removeFitting,
} from '../../src/places/vehicle/edits.ts';
import { stepped } from '../../src/places/vehicle/data/berth-step.ts';
import { dateOf } from '../../src/shell/date-of.ts';
import { recordFitting } from '../../src/places/vehicle/fittings/record-fitting.ts';

function demo() {
  const text = readFileSync(new URL('../../../../examples/demo.garage.yaml', import.meta.url), 'utf8');
  const read = readGarage(text, 'demo', { for: 'edit' });
  if (!read.ok) throw new Error(read.error.map((e) => e.message).join('\n'));
  return read.value;
}

const rowsOf = (garage: ReturnType<typeof demo>) => {
  const rows = fittingList(garage, 'packer', null, SHIPPED_TRADE);
  if (!rows.ok) throw new Error(rows.error.message);
  return rows.value;
};

describe('changes of the Vehicle place', () => {
  it('moves a load, a belonging and the kit, and touches nothing else', () => {
    const before = demo();
    const fuel = moveTo(before, 'loop', { kind: 'load', id: 'fuel' }, 'tail');
    expect(fuel.loads['fuel']).toEqual({
      name: before.loads['fuel']?.name,
      kg: 121,
      kind: 'fuel',
      berth: 'tail',
    });
    expect({ ...fuel, loads: before.loads }).toEqual(before);
    const kit = moveTo(before, 'loop', { kind: 'kit' }, 'canopy');
    expect(kit.trips['loop']?.kitBerth).toBe('canopy');
    const [id = ''] = Object.keys(before.belongings);
    expect(moveTo(before, 'loop', { kind: 'belonging', id }, 'roof').belongings[id]?.berth).toBe('roof');
    expect(moveTo(before, 'loop', { kind: 'ten' }, 'roof')).toBe(before);
    expect(moveTo(before, 'loop', { kind: 'load', id: 'gone' }, 'roof')).toBe(before);
  });

  it('takes a berth out with everything that names it, so that the record still reads', () => {
    const after = removeBerth(demo(), 'canopy');
    expect(JSON.stringify(after)).not.toContain('"berth":"canopy"');
    expect(after.berths['canopy']).toBeUndefined();
    expect(after.loads['water']).not.toHaveProperty('berth');
    expect(removeBerth(demo(), 'drawer').trips['loop']).not.toHaveProperty('kitBerth');
    expect(garageFile.safeParse(after).success).toBe(true);
  });

  it('takes a field out of a vehicle when it is given as undefined', () => {
    const after = changeVehicle(demo(), 'packer', { ratedRoofKg: undefined, wheelbaseMm: 3000 });
    expect(after.vehicles['packer']).not.toHaveProperty('ratedRoofKg');
    expect(after.vehicles['packer']?.wheelbaseMm).toBe(3000);
  });

  it('records the first word on an assumed place and keeps the rest of what was assumed', () => {
    const before = demo();
    const row = rowsOf(before).find((r) => r.fitting === null && r.hold !== null);
    if (row === undefined) throw new Error('no assumed place with a far side');
    const said = { size: '18 mm', status: 'measured', by: 'Wren', on: '2026-11-25' } as const;
    const after = recordFitting(before, 'packer', row, said);
    const now = rowsOf(after).find((r) => r.place === row.place && r.position === row.position);
    expect(now).toMatchObject({ ...said, torqueNm: row.torqueNm, access: row.access, drive: row.drive });
    expect(now?.hold?.size).toBe('18 mm');
    expect(rowsOf(after)).toHaveLength(rowsOf(before).length);
    const again = rowsOf(removeFitting(after, now?.fitting ?? ''));
    expect(again.find((r) => r.place === row.place && r.position === row.position)).toEqual(row);
  });

  it('gives a place the same id on every device, and another vehicle another', () => {
    const garage = demo();
    expect(fittingId(garage, 'packer', 'sump-plug', null)).toBe('sump-plug');
    expect(fittingId(garage, 'packer', 'sump-plug', 'trailer rear')).toBe('sump-plug-trailer-rear');
    const taken = { ...garage, fittings: { ...garage.fittings, 'sump-plug': rowsFitting() } };
    expect(fittingId(taken, 'other', 'sump-plug', null)).toBe('other-sump-plug');
  });

  it('marks what comes from home always, and lists what is bought as for sale once', () => {
    const [own = ''] = Object.keys(demo().belongings);
    expect(alwaysBring(demo(), [{ id: `${own}#2`, owned: true }]).belongings[own]?.pin).toBe('always');
    const items = [{ id: 'buy:SK2-35', owned: false }];
    const once = putOnBuyingList(demo(), items, 1000);
    const added = Object.entries(once.belongings).filter(([id]) => demo().belongings[id] === undefined);
    expect(added.map(([, b]) => b)).toMatchObject([{ is: 'SK2-35', forSale: true, price: 10 }]);
    expect(putOnBuyingList(once, items, 1000)).toEqual(once);
    // What the record has for sale is on the list already, under a name the catalogue does not know.
    const [listed = ''] = Object.entries(once.belongings).find(([, b]) => b.forSale) ?? [];
    expect(putOnBuyingList(once, [{ id: listed, owned: false }], 1000)).toEqual(once);
    // Two things have one price between them, which is neither's.
    const two = putOnBuyingList(demo(), [...items, { id: 'buy:CW-15', owned: false }], 2500);
    expect(Object.values(two.belongings).find((b) => b.is === 'SK2-35')?.price).toBeUndefined();
    expect(garageFile.safeParse(once).success).toBe(true);
  });

  it('writes dates as the record does', () => {
    expect(dateOf(new Date(2026, 2, 5))).toBe('2026-03-05');
  });
});

function rowsFitting() {
  return (
    garageFile.parse({
      waymend: 1,
      name: '',
      fittings: { one: { vehicle: 'packer', place: 'sump-plug' } },
    }).fittings['one'] ?? { vehicle: '', place: '', status: 'assumed' as const, confirmed: false }
  );
}

describe('a place that the pattern lacks', () => {
  it('is added as usual, counts in the list, and is taken away again', () => {
    const before = demo();
    const rows = rowsOf(before);
    const place = SHIPPED_TRADE.places.find(({ id }) => rows.every((r) => r.place !== id));
    if (place === undefined) throw new Error('the pickup has every place');
    const after = addPlace(before, 'packer', { place: place.id, position: 'third axle' }, rows);
    expect(garageFile.safeParse(after).success).toBe(true);
    const row = rowsOf(after).find((r) => r.place === place.id);
    expect(row).toMatchObject({ position: 'third axle', status: 'assumed', added: true });
    expect(rowsOf(removeFitting(after, row?.fitting ?? ''))).toEqual(rows);
  });

  it('at a further position leaves the one that stood for all of them', () => {
    const before = demo();
    const rows = rowsOf(before);
    const forAll = rows.find((r) => r.position === null && r.fitting === null);
    if (forAll === undefined) throw new Error('nothing stands for every position');
    const after = addPlace(before, 'packer', { place: forAll.place, position: 'second' }, rows);
    const now = rowsOf(after).filter((r) => r.place === forAll.place);
    expect(now.map((r) => [r.position, r.size, r.added])).toEqual([
      [null, forAll.size, false],
      ['second', now[1]?.size, true],
    ]);
  });
});

it.each([
  [1200, 'ArrowRight', false, 1210],
  [1200, 'ArrowLeft', false, 1190],
  [1200, 'ArrowRight', true, 1300],
  [1200, 'PageDown', false, 1100],
  [-1995, 'ArrowLeft', false, -2000],
  [1200, 'a', false, null],
])('a berth at %s mm goes with %s (Shift %s) to %s', (from, key, isLong, to) => {
  expect(stepped(from, key, isLong)).toBe(to);
});
