import { readFileSync } from 'node:fs';
import { readGarage } from '@waymend/garage/file/read-garage';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { loadView } from '@waymend/planner/views/load-view';
import { expect, it } from 'vitest';
import { berthAway } from '../../src/places/garage/belongings/thing/is-away.ts';

function demo() {
  const text = readFileSync(new URL('../../../../examples/demo.garage.yaml', import.meta.url), 'utf8');
  const read = readGarage(text, 'demo', { for: 'edit' });
  if (!read.ok) throw new Error(read.error.map((e) => e.message).join('\n'));
  return read.value;
}

it('[M13] a thing whose berth is on another vehicle is offered the berths of this one', () => {
  const garage = demo();
  const packer = garage.vehicles['packer'];
  const [first] = Object.entries(garage.belongings).filter(
    ([, b]) => !b.forSale && b.set === undefined && b.state === 'ready',
  );
  if (packer === undefined || first === undefined) throw new Error('the demo has changed');
  const [id, thing] = first;
  const away = {
    ...garage,
    vehicles: { ...garage.vehicles, other: { ...packer, name: 'Other' } },
    berths: {
      ...garage.berths,
      shelf: { vehicle: 'other', name: 'shelf', xMm: 2000, roof: false },
    },
    belongings: { ...garage.belongings, [id]: { ...thing, berth: 'shelf' } },
  };
  const found = berthAway(away, away.belongings[id] ?? thing, 'packer');
  expect(found).toMatchObject({ berth: 'shelf', vehicle: 'Other', here: packer.name });
  expect(found?.offered.map((one) => one.id).sort()).toEqual(Object.keys(garage.berths).sort());
  // Put where it is offered, it is in order.
  const here = { ...thing, berth: found?.offered[0]?.id ?? '' };
  expect(berthAway(away, here, 'packer')).toBe(null);
  expect(berthAway(away, { ...here, berth: 'shelf', forSale: true }, 'packer')).toBe(null);
  expect(berthAway(away, { forSale: false }, 'packer')).toBe(null);
  // Why it matters: the planner refuses a kit with it.
  const line = { id, name: 'it', grams: 100, copies: 1 };
  const loaded = (of: typeof garage) => loadView(of, 'loop', [line], SHIPPED_TRADE.loadIndex);
  expect(loaded(garage).ok).toBe(true);
  expect(loaded(away)).toMatchObject({ error: { id: 'berth-unknown' } });
});
