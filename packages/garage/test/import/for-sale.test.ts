import { isShoppingHeading, pricedLine } from '@waymend/garage/import/for-sale';
import { readList } from '@waymend/garage/import/read-list';
import { describe, expect, it } from 'vitest';

describe('prices on a line', () => {
  it.each([
    ['gear oil 1 l, EUR 12', 'gear oil 1 l', 12],
    ['gear oil 1 l - 12 euro', 'gear oil 1 l', 12],
    ['torque wrench (€49.90)', 'torque wrench', 49.9],
    ['torque wrench $49,90', 'torque wrench', 49.9],
    ['1/2 sockets 17 19, 8 EUR', '1/2 sockets 17 19', 8],
    ['1/2 sockets 17 19 21', '1/2 sockets 17 19 21', undefined],
    ['relay 12 V', 'relay 12 V', undefined],
    ['5 pounds of rags', '5 pounds of rags', undefined],
    ['EUR 12', 'EUR 12', undefined],
  ])('%s', (line, text, price) => {
    const read = pricedLine(line);
    expect(read.text).toBe(text);
    expect(read.price).toBe(price);
    expect(read.forSale).toBe(false);
  });

  it('takes "for sale" and "to buy" out of the line', () => {
    expect(pricedLine('bottle jack 4t, for sale, EUR 25')).toEqual({
      text: 'bottle jack 4t',
      price: 25,
      forSale: true,
    });
    expect(pricedLine('bottle jack 4t (to buy)')).toEqual({ text: 'bottle jack 4t', forSale: true });
  });

  it.each([
    ['to buy (prices from the shop in town)', true],
    ['Shopping list', true],
    ['bought last year', false],
    ['handles', false],
  ])('heading "%s"', (heading, buying) => {
    expect(isShoppingHeading(heading)).toBe(buying);
  });
});

it('reads what stands under such a heading as for sale, until the next heading', () => {
  const list = readList(
    '## to buy\nbottle jack 4t, EUR 25\ntyre repair box, EUR 39\n\n## owned\ntest lamp, 3 EUR\n',
  );
  if (!list.ok) throw new Error(list.error.message);
  expect(list.value.notUnderstood).toEqual([]);
  expect(list.value.matches.map((m) => [m.kind, m.text, m.forSale, m.price])).toEqual([
    ['thing', 'bottle jack 4t, EUR 25', true, 25],
    ['set', 'tyre repair box, EUR 39', true, 39],
    ['thing', 'test lamp, 3 EUR', false, 3],
  ]);
});
