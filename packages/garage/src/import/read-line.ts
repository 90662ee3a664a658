import type { KnownSet } from './catalogue.ts';
import { isNominalMass } from './choose-described.ts';
import type { Item } from './choose-sized.ts';
import type { Clause } from './clause.ts';
import { clauseOf } from './clause.ts';
import type { ClauseMatch } from './match-clause.ts';
import { matchClause } from './match-clause.ts';
import type { PhraseIndex } from './phrase-index.ts';
import type { ImportMatch, NotUnderstood, ThingMatch } from './reading.ts';
import { setOf } from './sets.ts';
import type { Token } from './tokens.ts';
import { LONGEST_LINE, tokensOf } from './tokens.ts';

export interface LineReading {
  readonly matches: readonly ImportMatch[];
  readonly notUnderstood: readonly NotUnderstood[];
}

interface Part {
  readonly clause: Clause;
  readonly match: ClauseMatch;
  readonly text: string;
}

/** Parts of a line must be this sure to stand by themselves. */
const SURE_PART = 0.78;
const PLURAL_ONLY = /plier|cutter|nipper|pincer|scissor|snips|glove|goggles/;

/** Reads one line of a list: usually one thing or a run of sizes, sometimes several things or a boxed set. */
export function readLine(
  text: string,
  line: number,
  index: PhraseIndex,
  sets: readonly KnownSet[],
): LineReading {
  const tokens = tokensOf(text);
  const clause = clauseOf(tokens, index);
  const set = setOf(clause, sets, text, line);
  if (set !== null)
    return 'kind' in set ? { matches: [set], notUnderstood: [] } : { matches: [], notUnderstood: [set] };
  if (text.length > LONGEST_LINE) {
    return unknown(
      line,
      text.slice(0, LONGEST_LINE),
      'the line is longer than 400 characters; put one thing on a line',
      null,
    );
  }
  const whole = matchClause(clause, index);
  const parts = partsOf(tokens).map((part): Part => {
    const own = clauseOf(part, index);
    return { clause: own, match: matchClause(own, index), text: textOf(part) };
  });
  if (parts.length > 1 && worthSplitting(whole, parts, /[+&]|\band\b|\bplus\b/i.test(text))) {
    const note = noteOf(text);
    return {
      matches: parts.flatMap(({ clause: own, match }) =>
        match.kind === 'found' ? things(match, own, index, line, text, note) : [],
      ),
      notUnderstood: parts.flatMap(({ match, text: part }) =>
        match.kind === 'found'
          ? []
          : [{ line, text: part, reason: match.reason, suggestion: match.suggestion }],
      ),
    };
  }
  const inBrackets = whole.kind === 'unknown' ? bracketed(tokens, index) : null;
  if (inBrackets !== null) {
    return {
      matches: things(inBrackets.match, inBrackets.clause, index, line, text, undefined),
      notUnderstood: [],
    };
  }
  return whole.kind === 'found'
    ? { matches: things(whole, clause, index, line, text, noteOf(text)), notUnderstood: [] }
    : unknown(line, text, whole.reason, whole.suggestion);
}

/** 'dikes (side cutters)': where only the brackets are understood, they say what it is. */
function bracketed(
  tokens: readonly Token[],
  index: PhraseIndex,
): { readonly match: Extract<ClauseMatch, { kind: 'found' }>; readonly clause: Clause } | null {
  const inside = tokens.filter(({ bracket }) => bracket);
  if (!inside.some(({ kind }) => kind === 'word')) return null;
  const counted = tokens.filter(({ bracket, kind }) => !bracket && kind !== 'word');
  const clause = clauseOf([...inside.map((token) => ({ ...token, bracket: false })), ...counted], index);
  const match = matchClause(clause, index);
  if (match.kind === 'unknown' || match.confidence < SURE_PART) return null;
  return { match: { ...match, confidence: match.confidence * 0.8 }, clause };
}

function unknown(line: number, text: string, reason: string, suggestion: string | null): LineReading {
  return { matches: [], notUnderstood: [{ line, text, reason, suggestion }] };
}

/** Cuts at commas, plus signs and 'and' outside brackets where words stand on both sides. */
function partsOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const parts: Token[][] = [[]];
  for (const token of tokens) {
    if (token.kind === 'mark' && token.mark === 'and' && !token.bracket && !token.remark) parts.push([]);
    else parts.at(-1)?.push(token);
  }
  const merged: Token[][] = [];
  for (const part of parts) {
    // A part without a word belongs to the one before: '17, 19 mm'.
    if (part.some(({ kind }) => kind === 'word') || merged.length === 0) merged.push(part);
    else merged.at(-1)?.push(...part);
  }
  return merged.filter((part) => part.length > 0);
}

function worthSplitting(whole: ClauseMatch, parts: readonly Part[], added: boolean): boolean {
  const found = parts.flatMap(({ match }) => (match.kind === 'found' ? [match] : []));
  const least = Math.min(...found.map(({ confidence }) => confidence));
  const most = Math.max(...found.map(({ confidence }) => confidence));
  const clear = found.length > 0 && least >= SURE_PART;
  // Nothing is dropped: what is clear is taken, the rest of the line is listed.
  if (whole.kind === 'unknown') return clear;
  if (found.length < parts.length) {
    return clear && parts.some(({ match, clause }) => match.kind === 'unknown' && isStrange(clause));
  }
  const different = new Set(found.map(({ items }) => items.map(({ id }) => id).join())).size;
  if (different < parts.length) return false;
  if (clear && whole.confidence < Math.min(least, 0.9)) return true;
  if (!added) return false;
  // 'crimpers + terminals': the name of the whole is that of one part only, and the other has a name of its own.
  const ofOnePart = parts.some(({ clause }) =>
    whole.named.every((word) => clause.words.some(({ form }) => form === word)),
  );
  // 'brake hose + copper pipe': the name was put together from both.
  return ofOnePart ? least >= 0.9 : most >= 0.95 && whole.confidence < 0.95;
}

/** Of no known word: surely another thing. */
function isStrange({ words }: Clause): boolean {
  return words.length > 0 && words.every(({ known, share }) => !known && share >= 0.5);
}

function textOf(tokens: readonly Token[]): string {
  return tokens
    .map((token) => {
      switch (token.kind) {
        case 'word':
          return token.word;
        case 'number':
          return `${token.text}${token.unit === null || token.fraction !== null ? '' : token.inch ? '"' : ` ${token.unit}`}`;
        case 'code':
          return `${token.letter}${token.value}`;
        case 'mark':
          return token.mark === 'times' ? 'x' : token.mark === 'range' ? '-' : ',';
      }
    })
    .join(' ');
}

/** What stands in brackets or after a dash, as a note. */
function noteOf(text: string): string | undefined {
  const remarks = [
    ...[...text.matchAll(/[([]([^()[\]]*\p{L}[^()[\]]*)[)\]]/gu)].map((match) => match[1]?.trim() ?? ''),
    / [-\u2013\u2014] (?=\p{L})(.*)$/u.exec(text.replace(/[([][^()[\]]*[)\]]/g, ''))?.[1]?.trim() ?? '',
  ].filter((remark) => remark !== '');
  return remarks.length === 0 ? undefined : remarks.join('; ').slice(0, 500);
}

function things(
  match: Extract<ClauseMatch, { kind: 'found' }>,
  clause: Clause,
  index: PhraseIndex,
  line: number,
  text: string,
  note: string | undefined,
): readonly ThingMatch[] {
  return match.items.map((item) => {
    const traits = index.traits.get(item.id);
    const copies = copiesOf(clause, match.copies, traits?.pack ?? 1, traits?.entry.name ?? '');
    const mass = massOf(item, clause, match.items.length, copies, index);
    const doubt = mass.doubt ?? match.why;
    return {
      kind: 'thing',
      line,
      text,
      catalogueId: item.id,
      copies,
      ...(item.size === undefined ? {} : { size: item.size }),
      ...(item.handleMm === undefined ? {} : { handleMm: item.handleMm }),
      ...(mass.grams === undefined ? {} : { grams: mass.grams }),
      weighed: mass.weighed,
      forSale: false,
      ...(note === undefined ? {} : { note }),
      confidence: Number((match.confidence * (mass.doubt === undefined ? 1 : 0.6)).toFixed(3)),
      ...(doubt === undefined ? {} : { why: doubt }),
      alternatives: match.alternatives,
    };
  });
}

function copiesOf(clause: Clause, chosen: number | null, pack: number, name: string): number {
  const said =
    clause.copies ?? chosen ?? (clause.pieces !== null && clause.pieces < 20 ? clause.pieces : null);
  // '2 pairs of gloves' are two where gloves come in pairs, '2 pairs of shackles' four.
  if (clause.pair) return (said ?? 1) * (pack === 1 && !PLURAL_ONLY.test(name) ? 2 : 1);
  if (said === null) return 1;
  return pack > 1 ? Math.max(1, Math.ceil(said / pack)) : said;
}

function massOf(
  item: Item,
  { grams }: Clause,
  items: number,
  copies: number,
  index: PhraseIndex,
): { readonly grams?: number; readonly weighed: boolean; readonly doubt?: string } {
  const traits = index.traits.get(item.id);
  if (grams === null || traits === undefined || isNominalMass(traits, grams)) {
    return item.grams === undefined ? { weighed: false } : { grams: item.grams, weighed: false };
  }
  if (items > 1)
    return { weighed: false, doubt: 'the mass is that of several things together and was not used' };
  const usual = item.grams ?? traits.entry.grams;
  const far = (g: number): number => Math.abs(Math.log(Math.max(g, 1) / Math.max(usual, 1)));
  const each = copies > 1 && far(grams / copies) < far(grams) ? grams / copies : grams;
  const stated = { grams: Math.round(each), weighed: true };
  return far(each) > Math.log(4) && Math.abs(each - usual) > 100
    ? { ...stated, doubt: `about ${usual} g is usual; look at the mass again` }
    : stated;
}
