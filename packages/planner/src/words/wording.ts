import type { ShownWord, Wording } from '@waymend/catalogue/wording';
import { SHOWN_WORDS, SPELT } from '@waymend/catalogue/wording';

export type { Wording } from '@waymend/catalogue/wording';

/**
 * A name or sentence of the catalogue in British or American words: whole words only, the longest first, with their plurals,
 * capitals and the article before them. What is not in the lists stays as it is.
 */
export function inWords(text: string, wording: Wording): string {
  const { pattern, shown } = readerOf(wording);
  return text.replace(
    pattern,
    (whole: string, article: string | undefined, word: string, plural?: string) => {
      const to = shown.get(plain(word));
      if (to === undefined || to.kept) return whole;
      const said = asWritten(word, to.text) + (plural === undefined ? '' : pluralOf(to.text));
      return article === undefined ? said : `${articleFor(article, said)} ${said}`;
    },
  );
}

interface Reader {
  /** Article, word and ending of each place where a listed word stands. */
  readonly pattern: RegExp;
  readonly shown: ReadonlyMap<string, { readonly text: string; readonly kept: boolean }>;
}

const readers = new Map<Wording, Reader>();

function readerOf(wording: Wording): Reader {
  const made = readers.get(wording) ?? read([...SHOWN_WORDS[wording], ...SPELT[wording]]);
  readers.set(wording, made);
  return made;
}

function read(pairs: readonly ShownWord[]): Reader {
  const words = pairs
    .map(([ours]) => ours)
    .sort((a, b) => b.length - a.length)
    // 'freewheel hub' and 'freewheel-hub' are one word to a reader.
    .map((word) => word.replace(/[ -]/g, '[ -]'));
  return {
    pattern: new RegExp(`(?:\\b(an?) )?(?<![\\p{L}\\d])(${words.join('|')})(e?s)?(?![\\p{L}\\d])`, 'giu'),
    shown: new Map(pairs.map(([ours, text]) => [plain(ours), { text, kept: ours === text }])),
  };
}

function plain(word: string): string {
  return word.toLowerCase().replaceAll('-', ' ');
}

function asWritten(word: string, shown: string): string {
  const first = word.charAt(0);
  const capital = first !== first.toLowerCase();
  return capital ? shown.charAt(0).toUpperCase() + shown.slice(1) : shown;
}

function pluralOf(shown: string): string {
  if (/(?:s|sh|ch|x|z)$/.test(shown)) return shown.endsWith('s') ? '' : 'es';
  return 's';
}

function articleFor(written: string, next: string): string {
  const article = /^[aeiou]/i.test(next) ? 'an' : 'a';
  return written.startsWith('A') ? article.charAt(0).toUpperCase() + article.slice(1) : article;
}
