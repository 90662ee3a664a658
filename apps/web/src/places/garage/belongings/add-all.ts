import type { Belonging, Garage } from '@waymend/garage/record/schema';
import { freshId } from '../../../shell/fresh-id.ts';

/** An own thing as it is recorded: its words and nothing else is known of it. */
export function ownThing(text: string): Belonging {
  const name = text.slice(0, 200);
  return { ...BARE, name, line: name };
}

/** A belonging of which nothing has been said. */
export const BARE: Belonging = {
  copies: 1,
  weighed: false,
  state: 'ready',
  forSale: false,
  doesNotFit: false,
  confirmed: false,
};

/**
 * A garage with belongings and taught words added, each under an id that no other device gives; what is inside a set
 * follows it.
 */
export function addAll(
  garage: Garage,
  added: Readonly<Record<string, Belonging>>,
  own: readonly string[] = [],
  words: Garage['words'] = {},
): Garage {
  const belongings: Record<string, Belonging> = { ...garage.belongings };
  const renamed = new Map<string, string>();
  for (const [wish, belonging] of Object.entries(added)) {
    const id = freshId(wish);
    renamed.set(wish, id);
    const box = belonging.inside === undefined ? undefined : renamed.get(belonging.inside);
    belongings[id] = box === undefined ? belonging : { ...belonging, inside: box };
  }
  for (const text of own) belongings[freshId(text)] = ownThing(text);
  return { ...garage, belongings, words: { ...garage.words, ...words } };
}
