import { BELONGING_BY_ID } from '@waymend/catalogue/belongings/all';
import { HEAVIEST_GRAMS, unusualMass } from '../file/unusual-mass.ts';
import { isForbiddenName } from '../record/forbidden-names.ts';
import type { Belonging, Garage } from '../record/schema.ts';
import { belonging } from '../record/schema.ts';
import type { ImportMatch, SetMatch, ThingMatch } from './reading.ts';

export interface ImportInto {
  readonly garage: Garage;
  /** Ids of what was added, in order. */
  readonly added: readonly string[];
  /** Matches that look like a belonging the garage already has from the same line: likely the same list again. */
  readonly repeated: readonly ImportMatch[];
  /** Matches whose mass is not believed, each with what is odd about it; the belonging is added without that mass. */
  readonly unbelieved: readonly { readonly match: ThingMatch; readonly sentence: string }[];
}

export interface ImportChoices {
  readonly makeId?: IdMaker;
  /** The owner has looked: unusual masses are added as they stand, and marked confirmed. */
  readonly confirmMasses?: boolean;
}

/** Makes an id that is not taken from what a thing is: 'SK3-10' -> 'sk3-10', then 'sk3-10-2'. */
export type IdMaker = (wish: string, isTaken: (id: string) => boolean) => string;

export const idFromContent: IdMaker = (wish, isTaken) => {
  const base =
    wish
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 56) || 'thing';
  for (let n = 1; ; n++) {
    const id = n === 1 ? base : `${base}-${n}`;
    if (!isTaken(id) && !isForbiddenName(id)) return id;
  }
};

/**
 * A new garage with the matches added as belongings; nothing that is there is changed or overwritten. The same matches
 * on the same garage always give the same ids. A boxed set becomes one belonging with its contents inside. A mass absurd for
 * its kind is left out until the owner confirms it; one that nothing has is never added.
 */
export function importInto(
  garage: Garage,
  matches: readonly ImportMatch[],
  { makeId = idFromContent, confirmMasses = false }: ImportChoices = {},
): ImportInto {
  const belongings: Record<string, Belonging> = { ...garage.belongings };
  const known = new Set(Object.values(garage.belongings).map(({ line, is }) => `${line ?? ''}\n${is ?? ''}`));
  const added: string[] = [];
  const repeated: ImportMatch[] = [];
  const unbelieved: ImportInto['unbelieved'][number][] = [];
  const add = (wish: string, fields: object): string => {
    const id = makeId(wish, (candidate) => Object.hasOwn(belongings, candidate));
    if (Object.hasOwn(belongings, id)) throw new Error(`the id maker gave ${id}, which is taken`);
    belongings[id] = belonging.parse(present(fields));
    added.push(id);
    return id;
  };
  for (const match of matches) {
    const is = match.kind === 'thing' ? match.catalogueId : '';
    if (known.has(`${shortened(match.text)}\n${is}`)) repeated.push(match);
    if (match.kind === 'thing') {
      const odd = unusualMass({ is: match.catalogueId, grams: match.grams });
      const kept = confirmMasses && (match.grams ?? 0) <= HEAVIEST_GRAMS;
      if (odd !== null && !kept) unbelieved.push({ match, sentence: sentenceOf(match, odd) });
      const fields = thingFields(match, garage);
      const mass = odd === null ? {} : kept ? { confirmed: true } : { grams: undefined, weighed: false };
      add(wishOf(match), { ...fields, ...mass });
    } else {
      const box = add(match.setId, setFields(match, garage));
      for (const { is: piece, copies } of match.contents)
        add(`${match.setId}-${piece}`, { is: piece, copies, inside: box });
    }
  }
  return { garage: { ...garage, belongings }, added, repeated, unbelieved };
}

function sentenceOf({ catalogueId, copies }: ThingMatch, odd: string): string {
  const name = BELONGING_BY_ID.get(catalogueId)?.name ?? catalogueId;
  return `${copies > 1 ? 'one ' : ''}${name} ${odd}; the mass is left out until you confirm it`;
}

function wishOf({ catalogueId, size, handleMm }: ThingMatch): string {
  return [catalogueId, size, handleMm === undefined ? undefined : `${handleMm} mm`]
    .filter((part) => part !== undefined)
    .join('-');
}

function thingFields(match: ThingMatch, garage: Garage): object {
  const { catalogueId, copies, size, handleMm, grams, weighed } = match;
  return { is: catalogueId, copies, size, handleMm, grams, weighed, ...common(match, garage) };
}

function setFields(match: SetMatch, garage: Garage): object {
  return {
    name: match.title,
    set: { carry: 'loose', caseGrams: match.caseGrams },
    ...common(match, garage),
  };
}

/** Line, note, price and where it is kept: a bag or berth of that name, else it stays in the note. */
function common({ text, note, price, forSale, location }: ImportMatch, garage: Garage): object {
  const bag = named(garage.bags, location);
  const berth = bag === undefined ? named(garage.berths, location) : undefined;
  const kept =
    location !== undefined && bag === undefined && berth === undefined ? `kept in: ${location}` : undefined;
  const notes = [note, kept].filter((part) => part !== undefined && part !== '');
  return {
    line: shortened(text),
    note: notes.length === 0 ? undefined : notes.join('; ').slice(0, 2000),
    price,
    forSale,
    bag,
    berth,
  };
}

function shortened(text: string): string {
  return text.slice(0, 200);
}

function named(
  table: Readonly<Record<string, { readonly name: string }>>,
  name: string | undefined,
): string | undefined {
  if (name === undefined) return undefined;
  const plain = name.trim().toLowerCase();
  return Object.entries(table).find(([id, one]) => id === plain || one.name.toLowerCase() === plain)?.[0];
}

/** Without the fields that are not said. */
function present(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
