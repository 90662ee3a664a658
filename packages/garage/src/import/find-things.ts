import type { ImportCatalogue } from './catalogue.ts';
import { SHIPPED_CATALOGUE } from './catalogue.ts';
import type { ImportOptions } from './read-list.ts';
import { lineReaderOf } from './read-list.ts';
import { formsOf } from './words.ts';

/** Every word that some name of a thing has, as written and in compared form. */
const HAYSTACKS = new WeakMap<ImportCatalogue, ReadonlyMap<string, readonly string[]>>();

/**
 * The things of the catalogue that a search may mean, likeliest first: what the line would be read as, then everything whose
 * names hold all its words or their beginnings, in whatever region's words ('spanner', 'tommy bar') and with its numbers.
 */
export function findThings(
  text: string,
  { catalogue = SHIPPED_CATALOGUE, words = {} }: ImportOptions = {},
): readonly string[] {
  const typed = wordsIn(text.slice(0, 200));
  if (typed.length === 0) return [];
  const { matches } = lineReaderOf({ catalogue, words }).read(text.slice(0, 200), 1);
  const read = matches.flatMap((match) =>
    match.kind === 'thing' ? [match.catalogueId, ...match.alternatives] : [],
  );
  const named = [...haystacksOf(catalogue)].flatMap(([id, hay]) =>
    typed.every((word, i) => holds(hay, word, i === typed.length - 1)) ? [id] : [],
  );
  // What it would be read as goes first only where it also has the words, or nothing has them.
  const has = new Set(named);
  const sure = named.length === 0 ? read : read.filter((id) => has.has(id));
  return [...new Set([...sure, ...named])];
}

function haystacksOf(catalogue: ImportCatalogue): ReadonlyMap<string, readonly string[]> {
  const before = HAYSTACKS.get(catalogue);
  if (before !== undefined) return before;
  const sets = new Map<string, Set<string>>();
  for (const { id, name, size } of catalogue.belongings)
    sets.set(id, new Set(comparedWords(`${name} ${size ?? ''}`)));
  for (const [text, ids] of catalogue.idsByText) {
    const compared = comparedWords(text);
    for (const id of ids) for (const word of compared) sets.get(id)?.add(word);
  }
  const haystacks = new Map([...sets].map(([id, set]) => [id, [...set]] as const));
  HAYSTACKS.set(catalogue, haystacks);
  return haystacks;
}

/** '17 mm, 3/8 in drive' -> 17, mm, 3/8, in, drive. */
function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/\d+(?:[-./]\d+)*|\p{L}+/gu) ?? [];
}

function comparedWords(text: string): readonly string[] {
  return wordsIn(text).flatMap((word) => [word, ...formsOf(word)]);
}

/** A number counts whole unless it is still being typed; a word by its beginning, or spelt the other way. */
function holds(hay: readonly string[], word: string, last: boolean): boolean {
  if (/^\d/.test(word)) return hay.some((one) => one === word || (last && one.startsWith(word)));
  const forms = formsOf(word);
  return hay.some((one) => one.startsWith(word)) || forms.every((form) => hay.some((one) => one === form));
}
