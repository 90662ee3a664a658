import { FAILURES } from '@waymend/catalogue/failures/all';
import { JOBS } from '@waymend/catalogue/jobs/all';
import { readGarage } from '@waymend/garage/file/read-garage';
import { writeGarage } from '@waymend/garage/file/write-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { onBuyingList } from '../../src/shell/buying-list.ts';
import {
  asBought,
  asReady,
  asRenewed,
  notRenewed,
  offShopList,
  renewalId,
  withLimit,
  withMustDo,
  withPin,
} from '../../src/places/kit/edits.ts';

const demo = open(readFileSync(new URL('../../../../examples/demo.garage.yaml', import.meta.url), 'utf8'));

function open(text: string): Garage {
  const read = readGarage(text, 'demo.garage.yaml', { for: 'edit' });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
}

/** Every edit leaves a garage that its own file format takes back unchanged. */
function kept(garage: Garage): Garage {
  expect(open(writeGarage(garage))).toEqual(garage);
  return garage;
}

const job = JOBS[0]?.id ?? '';
const failure = FAILURES.find((f) => f.renew !== undefined)?.id ?? '';
const trip = (garage: Garage) => garage.trips['loop'];

describe('edits of the kit screens', () => {
  it('the handle sets the limit on mass to the gram and leaves everything else', () => {
    const after = kept(withLimit(demo, 'loop', { grams: 62_413 }));
    expect(trip(after)).toEqual({ ...trip(demo), limitKg: 62.413 });
    expect({ ...after, trips: demo.trips }).toEqual(demo);
  });

  it('takes limits away and sets money', () => {
    const after = kept(
      withLimit(demo, 'loop', { grams: null, litres: 90, budget: 300, buyFrom: 'catalogue' }),
    );
    expect(trip(after)?.limitKg).toBeUndefined();
    expect(trip(after)).toMatchObject({ limitLitres: 90, budget: 300, buyFrom: 'catalogue' });
    expect(trip(withLimit(after, 'loop', { litres: null }))?.limitLitres).toBeUndefined();
  });

  it('pins a belonging by any of its copies, and takes the mark off again', () => {
    const after = kept(withPin(demo, ['film#2', 'buy:CW-14'], 'never'));
    expect(after.belongings['film']?.pin).toBe('never');
    expect(withPin(after, ['film'], null)).toEqual(demo);
  });

  it('marks must-do jobs once', () => {
    const twice = withMustDo(withMustDo(demo, 'loop', job, true), 'loop', job, true);
    expect(trip(kept(twice))?.mustDo).toEqual([job]);
    expect(trip(withMustDo(twice, 'loop', job, false))?.mustDo).toEqual([]);
  });

  it('puts catalogue things on the buying list once, at their guide price, under an id of their own', () => {
    const item = { is: 'CW-14', cents: 600 };
    const after = kept(onBuyingList(onBuyingList(demo, [item]), [item]));
    const added = Object.entries(after.belongings).filter(([id]) => demo.belongings[id] === undefined);
    expect(added).toHaveLength(1);
    expect(added[0]?.[1]).toMatchObject({ is: 'CW-14', forSale: true, price: 6 });
  });

  it('what is bought is owned; what is taken off the list is gone', () => {
    const [id] = Object.entries(demo.belongings).find(([, b]) => b.forSale) ?? [''];
    expect(id).not.toBe('');
    expect(kept(asBought(demo, id)).belongings[id]?.forSale).toBe(false);
    expect(kept(offShopList(demo, id)).belongings[id]).toBeUndefined();
  });

  it('makes ready what was not, and nothing else', () => {
    const [id] = Object.entries(demo.belongings).find(([, b]) => b.state === 'flat') ?? [''];
    const after = kept(asReady(demo, [`ready:${id}`]));
    expect(after.belongings[id]?.state).toBe('ready');
    expect(Object.values(after.belongings).filter((b) => b.state === 'lent')).toHaveLength(
      Object.values(demo.belongings).filter((b) => b.state === 'lent').length,
    );
  });

  it('a renewal is a factor on its failure, and is taken back', () => {
    const after = kept(asRenewed(demo, 'packer', failure, { what: 'new springs', rateFactor: 0.25 }));
    expect(after.weakPoints[renewalId('packer', failure)]?.factor).toBe(0.25);
    expect(notRenewed(after, renewalId('packer', failure))).toEqual(demo);
  });

  it('an edit of a trip that is not there changes nothing', () => {
    expect(withLimit(demo, 'nowhere', { grams: 1 })).toBe(demo);
  });
});
