import type { Garage } from '@waymend/garage/record/schema';
import { freshId } from './fresh-id.ts';

/** A thing of the catalogue that is wanted; `cents` is its price, null when it is not known. */
export interface Wanted {
  readonly is: string;
  readonly cents: number | null;
}

/** Puts things of the catalogue on the buying list, once each. */
export function onBuyingList(garage: Garage, items: readonly Wanted[]): Garage {
  const belongings = { ...garage.belongings };
  for (const { is, cents } of items) {
    if (Object.values(belongings).some((b) => b.is === is && b.forSale)) continue;
    belongings[freshId(is)] = {
      is,
      copies: 1,
      weighed: false,
      state: 'ready',
      forSale: true,
      doesNotFit: false,
      confirmed: false,
      ...(cents === null ? {} : { price: cents / 100 }),
    };
  }
  return { ...garage, belongings };
}
