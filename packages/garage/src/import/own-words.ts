import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { isForbiddenName } from '../record/forbidden-names.ts';
import type { Garage } from '../record/schema.ts';
import type { ImportCatalogue } from './catalogue.ts';
import { SHIPPED_CATALOGUE } from './catalogue.ts';
import { plainLine } from './tokens.ts';

/** Taught words that name one thing of the catalogue. */
export function ownNames(
  words: Garage['words'],
  catalogue: ImportCatalogue,
): readonly { readonly text: string; readonly ids: readonly string[] }[] {
  return Object.entries(words).flatMap(([text, { means }]) =>
    isCatalogueId(means, catalogue) ? [{ text, ids: [means] }] : [],
  );
}

/** A line with the taught words that stand for a phrase replaced by it, each once and never within another. */
export function withOwnPhrases(text: string, words: Garage['words'], catalogue: ImportCatalogue): string {
  const phrases = Object.entries(words)
    .filter(([, { means }]) => !isCatalogueId(means, catalogue))
    .sort(([a], [b]) => b.length - a.length);
  if (phrases.length === 0) return text;
  const meaning = new Map(phrases.map(([word, { means }]) => [plainLine(word), means]));
  const any = phrases.map(([word]) => plainLine(word).replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  return text.replace(new RegExp(`(?<![\\p{L}\\d])(?:${any})s?(?![\\p{L}\\d])`, 'giu'), (typed) => {
    const plain = plainLine(typed);
    return meaning.get(plain) ?? meaning.get(plain.replace(/s$/, '')) ?? typed;
  });
}

/**
 * Teaches the garage a word once: `means` is a catalogue id ('PR-L25') or other words for it ('locking pliers'). Refuses
 * empty words, words of numbers only, and a meaning that uses the word itself.
 */
export function teach(
  garage: Garage,
  word: string,
  means: string,
  catalogue: ImportCatalogue = SHIPPED_CATALOGUE,
): Result<Garage> {
  const plain = plainLine(word);
  if (!/\p{L}{2}/u.test(plain) || plain.length > 80) {
    return refuse(
      'word-unusable',
      `"${word.slice(0, 80)}" cannot be taught; use a word of at least two letters and at most 80`,
    );
  }
  if (isForbiddenName(plain)) return refuse('word-unusable', 'this word cannot be taught; use another');
  const meaning = means.trim();
  if (meaning === '' || meaning.length > 200) {
    return refuse(
      'meaning-missing',
      `say what "${plain}" means: a thing of the catalogue or other words for it`,
    );
  }
  if (
    !isCatalogueId(meaning, catalogue) &&
    plainLine(meaning)
      .split(/[^\p{L}\d]+/u)
      .includes(plain)
  ) {
    return refuse('meaning-circular', `"${plain}" cannot be explained by itself; use other words`);
  }
  return ok({ ...garage, words: { ...garage.words, [plain]: { means: meaning } } });
}

function isCatalogueId(means: string, catalogue: ImportCatalogue): boolean {
  return catalogue.belongings.some(({ id }) => id === means);
}
