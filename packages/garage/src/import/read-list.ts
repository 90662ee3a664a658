import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import { whyNoText } from '../file/limits.ts';
import type { Garage } from '../record/schema.ts';
import type { ImportCatalogue } from './catalogue.ts';
import { SHIPPED_CATALOGUE } from './catalogue.ts';
import { isShoppingHeading, pricedLine } from './for-sale.ts';
import { ownNames, withOwnPhrases } from './own-words.ts';
import { phraseIndexOf } from './phrase-index.ts';
import type { PhraseIndex } from './phrase-index.ts';
import { readLine } from './read-line.ts';
import type { LineReading } from './read-line.ts';
import type { ImportReading } from './reading.ts';

export interface ImportOptions {
  readonly catalogue?: ImportCatalogue;
  /** The garage's own words. */
  readonly words?: Garage['words'];
  /** Name of the file, for refusals. */
  readonly name?: string;
}

/** Longest list that is read. */
const MOST_LINES = 5_000;

/** Everything needed to read lines, built once. */
export interface LineReader {
  readonly read: (text: string, line: number) => LineReading;
}

/** Without own words the index of a catalogue is always the same, and is kept as long as the catalogue. */
const PLAIN_INDEXES = new WeakMap<ImportCatalogue, PhraseIndex>();

function plainIndexOf(catalogue: ImportCatalogue): PhraseIndex {
  const index = PLAIN_INDEXES.get(catalogue) ?? phraseIndexOf(catalogue);
  PLAIN_INDEXES.set(catalogue, index);
  return index;
}

export function lineReaderOf({ catalogue = SHIPPED_CATALOGUE, words = {} }: ImportOptions): LineReader {
  const own = ownNames(words, catalogue);
  const index = own.length === 0 ? plainIndexOf(catalogue) : phraseIndexOf(catalogue, own);
  return {
    read: (text, line) => readLine(withOwnPhrases(text, words, catalogue), line, index, catalogue.sets),
  };
}

/**
 * Reads a typed list: one line, one thing or a run of sizes. Headings (marked, in capitals, or alone after a blank line)
 * are told apart, and give lines that only have numbers their meaning; under 'to buy' or 'for sale' things are not owned yet,
 * and 'EUR 29' at the end of a line is the price of one. Refuses only what is no text at all.
 */
export function readList(text: string, options: ImportOptions = {}): Result<ImportReading> {
  const name = options.name ?? 'the list';
  const unreadable = whyNoText(text, name, 'list');
  if (unreadable !== null) return { ok: false, error: unreadable };
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  if (lines.length > MOST_LINES) {
    return {
      ok: false,
      error: {
        id: 'list-too-long',
        message: `${name} has ${lines.length} lines and at most ${MOST_LINES} are read; split it`,
      },
    };
  }
  const reader = lineReaderOf(options);
  const matches: ImportReading['matches'][number][] = [];
  const notUnderstood: ImportReading['notUnderstood'][number][] = [];
  const headings: { line: number; text: string }[] = [];
  let heading: string | null = null;
  lines.forEach((typed, i) => {
    const line = i + 1;
    const trimmed = typed.trim().replace(/^[-*•·]\s+/u, '');
    if (trimmed === '') return;
    const marked = markedHeading(trimmed);
    if (marked !== null) {
      headings.push({ line, text: trimmed });
      heading = marked;
      return;
    }
    const { text: said, price, forSale } = pricedLine(trimmed);
    const reading = reader.read(said, line);
    const alone = (lines[i - 1] ?? '').trim() === '' && (lines[i + 1] ?? '').trim() !== '';
    if (isHeading(trimmed, alone, reading)) {
      headings.push({ line, text: trimmed });
      heading = trimmed;
      return;
    }
    const best =
      reading.matches.length === 0 && heading !== null ? underHeading(said, heading, line, reader) : null;
    const sold = { forSale: forSale || (heading !== null && isShoppingHeading(heading)) };
    const money = price === undefined ? sold : { ...sold, price };
    matches.push(
      ...(best?.matches ?? reading.matches).map((match) => ({ ...match, ...money, text: trimmed })),
    );
    notUnderstood.push(...(best?.notUnderstood ?? reading.notUnderstood));
  });
  return ok({ matches, notUnderstood, headings });
}

/** '# wheels', '== sockets ==', 'handles:', '[pliers]'. */
function markedHeading(text: string): string | null {
  const marked =
    /^#+\s+(.*)$/.exec(text) ?? /^[=~*-]{2,}\s*(.*?)\s*[=~*-]*$/.exec(text) ?? /^\[([^\]]*)\]$/.exec(text);
  if (marked !== null) return marked[1] ?? '';
  return /^[^\d]*:$/.test(text) ? text.slice(0, -1) : null;
}

/** 'Box 1 (sockets)', 'drawer B'. */
const CONTAINER =
  /^(?:box|bag|drawer|case|crate|shelf|roll|tray|bin|tin|pouch|bucket) ?(?:\d{1,2}|[a-z])(?![\p{L}\d])/iu;

/** Without a mark: in capitals, or alone after a blank line, and not plainly a thing. */
function isHeading(text: string, alone: boolean, { matches, notUnderstood }: LineReading): boolean {
  if (matches.length === 0 && (CONTAINER.test(text) || text.endsWith(':'))) return true;
  if (/\d/.test(text) || text.split(/\s+/).length > 6) return false;
  if (/\p{L}{4}/u.test(text) && text === text.toUpperCase()) return alone || matches.length === 0;
  if (!alone) return false;
  const [first] = matches;
  const plain =
    matches.length === 1 && notUnderstood.length === 0 && first !== undefined && first.confidence >= 0.9;
  return !plain || /\betc\b/i.test(text);
}

/** 'sockets, 1/2 deep' above '17 19 21': the heading says what the numbers are. */
function underHeading(text: string, heading: string, line: number, reader: LineReader): LineReading | null {
  if (!/\d/.test(text) || /\p{L}{4}/u.test(text.replace(/\([^)]*\)/g, ''))) return null;
  const together = reader.read(`${heading} ${text}`, line);
  if (together.matches.length === 0) return null;
  return {
    ...together,
    matches: together.matches.map((match) => ({
      ...match,
      text,
      confidence: Number((match.confidence * 0.9).toFixed(3)),
    })),
  };
}
