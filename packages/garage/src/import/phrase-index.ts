import type { ImportCatalogue } from './catalogue.ts';
import { editDistance } from '../file/nearest.ts';
import { MORE_NAMES } from './more-names.ts';
import type { SizedClass, Traits } from './traits.ts';
import { traitsOf } from './traits.ts';
import { formsOf, isModifier, wordsOf } from './words.ts';

/** Something people call things: its words, and what it may mean, the usual one first. */
export interface Phrase {
  readonly words: readonly string[];
  readonly ids: readonly string[];
  /** Sum of the weights of its words. */
  readonly weight: number;
  /** Taught by the owner: goes before everything else. */
  readonly own: boolean;
  /** Below 1 for half a name that still can mean only one thing. */
  readonly sureness: number;
}

/** The names of a catalogue, ready to be compared with typed words. */
export interface PhraseIndex {
  readonly phrases: readonly Phrase[];
  readonly byWord: ReadonlyMap<string, readonly number[]>;
  readonly traits: ReadonlyMap<string, Traits>;
  readonly byClass: ReadonlyMap<SizedClass, readonly Traits[]>;
  /** Every word that some name of a thing has. */
  readonly vocabulary: ReadonlyMap<string, ReadonlySet<string>>;
  /** How much a word tells: rare words tell most. 0 for words that stand in no name. */
  readonly weightOf: (word: string) => number;
  /** The word of a name that a typed one means, or null; `sureness` is below 1 for a misspelling. */
  readonly resolve: (word: string) => { readonly words: readonly string[]; readonly sureness: number } | null;
}

/** Builds the index once for a catalogue; `own` are words the owner taught, with what they mean. */
export function phraseIndexOf(
  catalogue: ImportCatalogue,
  own: readonly { readonly text: string; readonly ids: readonly string[] }[] = [],
): PhraseIndex {
  const traits = new Map(catalogue.belongings.map((entry) => [entry.id, traitsOf(entry)]));
  const known = (ids: readonly string[]): readonly string[] => ids.filter((id) => traits.has(id));
  const drafts = new Map<string, { words: readonly string[]; ids: readonly string[]; own: boolean }>();
  const add = (text: string, ids: readonly string[], taught = false): void => {
    const words = [...new Set(asOneWord(wordsOf(text), single).flatMap(formsOf))];
    if (words.length === 0 || ids.length === 0) return;
    const key = [...words].sort().join(' ');
    const before = drafts.get(key);
    if (before?.own === true) return;
    drafts.set(key, { words, ids: [...new Set([...(before?.ids ?? []), ...ids])], own: taught });
  };
  const names: readonly (readonly [string, readonly string[]])[] = [
    ...MORE_NAMES,
    ...catalogue.idsByText,
    ...catalogue.belongings.flatMap(({ id, name }) =>
      [name, name.split(/,|:| with /)[0] ?? name].map((text) => [text, [id]] as const),
    ),
  ];
  const single = new Set([...own.map(({ text }) => text), ...names.map(([text]) => text)].flatMap(wordsOf));
  for (const { text, ids } of own) add(text, known(ids), true);
  for (const [text, ids] of names) add(text, known(ids));

  const count = new Map<string, number>();
  for (const { words } of drafts.values())
    for (const word of words) count.set(word, (count.get(word) ?? 0) + 1);
  const weightOf = (word: string): number => {
    const times = count.get(word);
    return times === undefined ? 0 : Math.log(1 + drafts.size / times);
  };
  const phrases = [...drafts.values(), ...tellingWords([...drafts.values()])].map((draft) => ({
    sureness: 1,
    ...draft,
    weight: draft.words.reduce((sum, word) => sum + weightOf(word), 0),
  }));
  const byWord = new Map<string, number[]>();
  phrases.forEach(({ words }, i) => {
    for (const word of words) {
      const before = byWord.get(word) ?? [];
      byWord.set(word, before);
      before.push(i);
    }
  });
  const vocabulary = new Map<string, Set<string>>();
  for (const { words, ids } of phrases) {
    const [id] = ids;
    if (id === undefined) continue;
    const before = vocabulary.get(id) ?? new Set();
    vocabulary.set(id, before);
    for (const word of words) before.add(word);
  }
  const byClass = new Map<SizedClass, Traits[]>();
  for (const one of traits.values()) {
    if (one.class === null) continue;
    const before = byClass.get(one.class) ?? [];
    byClass.set(one.class, before);
    before.push(one);
  }
  return { phrases, byWord, traits, byClass, vocabulary, weightOf, resolve: resolver(count, phrases) };
}

/** Words that stand in the names of one thing only say it by themselves: 'feelers'. */
function tellingWords(
  names: readonly { readonly words: readonly string[]; readonly ids: readonly string[] }[],
): readonly { words: readonly string[]; ids: readonly string[]; own: boolean; sureness: number }[] {
  const things = new Map<string, Set<string>>();
  const whole = new Set<string>();
  for (const { words, ids } of names) {
    const [only, more] = words;
    if (only !== undefined && more === undefined) whole.add(only);
    for (const word of words) {
      const before = things.get(word) ?? new Set();
      things.set(word, before.add(ids[0] ?? ''));
    }
  }
  return [...things].flatMap(([word, ids]) => {
    const [id] = ids;
    const telling =
      ids.size === 1 && id !== undefined && word.length > 4 && !isModifier(word) && !whole.has(word);
    return telling ? [{ words: [word], ids: [id], own: false, sureness: 0.8 }] : [];
  });
}

/** 'tool box' where another name says 'toolbox': one word for both. */
function asOneWord(words: readonly string[], single: ReadonlySet<string>): readonly string[] {
  const out: string[] = [];
  for (const word of words) {
    const last = out.at(-1);
    if (last !== undefined && single.has(last + word)) out[out.length - 1] = last + word;
    else out.push(word);
  }
  return out;
}

/** 'multitool' <-> 'multi tool': neighbours of a name written as one word. */
function resolver(
  count: ReadonlyMap<string, number>,
  phrases: readonly { readonly words: readonly string[] }[],
): PhraseIndex['resolve'] {
  const joined = new Map<string, readonly string[]>();
  for (const { words } of phrases) {
    words.forEach((word, i) => {
      const next = words[i + 1];
      if (next !== undefined && !count.has(word + next)) joined.set(word + next, [word, next]);
    });
  }
  const candidates = [...count.keys(), ...joined.keys()].filter((word) => word.length > 3);
  const cache = new Map<string, ReturnType<PhraseIndex['resolve']>>();
  const expand = (word: string): readonly string[] => joined.get(word) ?? [word];
  const find = (word: string): ReturnType<PhraseIndex['resolve']> => {
    if (count.has(word)) return { words: [word], sureness: 1 };
    if (joined.has(word)) return { words: expand(word), sureness: 1 };
    const squeezed = squeeze(word);
    const same = candidates.find((candidate) => candidate.length > 4 && squeeze(candidate) === squeezed);
    if (same !== undefined) return { words: expand(same), sureness: 0.95 };
    if (word.length < 6) return null;
    // Short words have too many neighbours ('chair', 'chain'): one slip from six letters, two from nine.
    const most = word.length >= 9 ? 2 : 1;
    let best: string | null = null;
    let least = most + 1;
    for (const candidate of candidates) {
      if (candidate[0] !== word[0]) continue;
      const distance = editDistance(word, candidate, least - 1);
      if (distance < least) {
        best = candidate;
        least = distance;
      }
    }
    return best === null ? null : { words: expand(best), sureness: 1 - 0.1 * least };
  };
  return (word) => {
    const before = cache.get(word);
    if (before !== undefined) return before;
    const found = find(word);
    cache.set(word, found);
    return found;
  };
}

/** Doubled letters as one: spaner, cuters, compresor. */
function squeeze(word: string): string {
  return word.replace(/(.)\1+/gu, '$1');
}
