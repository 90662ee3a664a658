import { readFileSync } from 'node:fs';
import { readGarage } from '@waymend/garage/file/read-garage';
import { readList } from '@waymend/garage/import/read-list';
import { expect, it } from 'vitest';

const example = (name: string) =>
  readFileSync(new URL(`../../../../examples/${name}`, import.meta.url), 'utf8');

it('reads the list of the examples as the belongings of the demonstration garage, line by line', () => {
  const garage = readGarage(example('demo.garage.yaml'), 'demo.garage.yaml');
  if (!garage.ok) throw new Error(garage.error.map((e) => e.message).join('\n'));
  const list = readList(example('demo-belongings.txt'), { words: garage.value.words });
  if (!list.ok) throw new Error(list.error.message);
  const read = list.value.matches.map((match) => ({
    is: match.kind === 'thing' ? match.catalogueId : 'a set',
    copies: match.kind === 'thing' ? match.copies : 1,
    forSale: match.forSale,
    price: match.price,
    line: match.text,
  }));
  const kept = Object.values(garage.value.belongings)
    .filter((belonging) => belonging.inside === undefined)
    .map(({ is, set, copies, forSale, price, line }) => ({
      is: set === undefined ? is : 'a set',
      copies,
      forSale,
      price,
      line,
    }));
  const key = (thing: object) => JSON.stringify(thing);
  expect(read.map(key).sort()).toEqual(kept.map(key).sort());
  expect(list.value.notUnderstood.map(({ text }) => text)).toEqual(['tin with mixed stuff']);
});
