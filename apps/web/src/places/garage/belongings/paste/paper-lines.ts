import type { ImportMatch, ImportReading, NotUnderstood, ThingMatch } from '@waymend/garage/import/reading';
import { DOUBTFUL } from '@waymend/garage/import/reading';
import type { Suggested } from '../../../../worker/belongings/protocol.ts';

/** What the owner decided about one part of a line. */
export type Decision =
  | { readonly kind: 'thing'; readonly id: string }
  | { readonly kind: 'set'; readonly id: string }
  /** As it was read, doubtful or not. */
  | { readonly kind: 'right' }
  /** Left out. */
  | { readonly kind: 'strike' }
  /** The owner's own thing, counted but not planned with. */
  | { readonly kind: 'own' };

export type Decisions = ReadonlyMap<string, Decision>;

export type PartState = 'understood' | 'doubtful' | 'unknown' | 'own' | 'struck';

/** One thing that a line says, or one that it says and nobody understood. */
export interface Part {
  /** Stays the same while the line does, wherever in the list it moves. */
  readonly key: string;
  readonly state: PartState;
  /** What will be added; null while it is not understood, left out or an own thing. */
  readonly match: ImportMatch | null;
  /** What to look at again, or why it was not understood. */
  readonly why: string | null;
  readonly alternatives: readonly string[];
  /** The nearest thing, for what was not understood. */
  readonly nearest: Suggested | null;
  /** The words it is about. */
  readonly text: string;
}

export interface PaperLine {
  /** 1-based. */
  readonly number: number;
  /** As typed. */
  readonly text: string;
  readonly heading: boolean;
  readonly parts: readonly Part[];
}

/** Boxed sets by id, to make one out of a decision. */
export type SetMaker = (
  id: string,
) => Pick<Extract<ImportMatch, { kind: 'set' }>, 'setId' | 'title' | 'caseGrams' | 'contents'> | null;

/** A reading line by line, as the list has them, with what the owner decided put in place. */
export function paperLines(
  reading: ImportReading,
  suggested: Readonly<Record<string, Suggested>>,
  decisions: Decisions,
  makeSet: SetMaker,
): readonly PaperLine[] {
  interface Raw {
    readonly text: string;
    readonly matches: ImportMatch[];
    readonly unknown: NotUnderstood[];
  }
  const raws = new Map<number, Raw>();
  const at = (line: number, text: string): Raw => {
    const raw = raws.get(line) ?? { text, matches: [], unknown: [] };
    raws.set(line, raw);
    return raw;
  };
  for (const match of reading.matches) at(match.line, match.text).matches.push(match);
  for (const one of reading.notUnderstood) at(one.line, one.text).unknown.push(one);
  const headings = new Map(reading.headings.map(({ line, text }) => [line, text]));
  const numbers = [...new Set([...raws.keys(), ...headings.keys()])].sort((a, b) => a - b);
  const seen = new Map<string, number>();
  const nearestOf = ({ suggestion }: NotUnderstood): Suggested | null =>
    suggestion !== null && Object.hasOwn(suggested, suggestion) ? (suggested[suggestion] ?? null) : null;
  return numbers.map((number): PaperLine => {
    const raw = raws.get(number);
    if (raw === undefined) return { number, text: headings.get(number) ?? '', heading: true, parts: [] };
    const times = (seen.get(raw.text) ?? 0) + 1;
    seen.set(raw.text, times);
    const key = (what: string, i: number): string => `${raw.text}\n${times}\n${what}${i}`;
    return {
      number,
      text: raw.text,
      heading: false,
      parts: [
        ...raw.matches.map((match, i) => matchPart(match, key('m', i), decisions, makeSet)),
        ...raw.unknown.map((one, i) => unknownPart(one, nearestOf(one), key('u', i), decisions, makeSet)),
      ],
    };
  });
}

function matchPart(match: ImportMatch, key: string, decisions: Decisions, makeSet: SetMaker): Part {
  const decision = decisions.get(key);
  const part = {
    key,
    why: match.why ?? null,
    alternatives: match.kind === 'thing' ? [match.catalogueId, ...match.alternatives] : [],
    nearest: null,
    text: match.text,
  };
  switch (decision?.kind) {
    case 'strike':
    case 'own':
      return { ...part, state: decision.kind === 'own' ? 'own' : 'struck', match: null };
    case 'right':
      return { ...part, state: 'understood', match, why: null };
    case 'thing':
      return { ...part, state: 'understood', match: asThing(match, decision.id), why: null };
    case 'set': {
      const set = asSet(match, decision.id, makeSet);
      return { ...part, state: set === null ? 'doubtful' : 'understood', match: set ?? match };
    }
    case undefined:
      return { ...part, state: match.confidence < DOUBTFUL ? 'doubtful' : 'understood', match };
  }
}

function unknownPart(
  one: NotUnderstood,
  nearest: Suggested | null,
  key: string,
  decisions: Decisions,
  makeSet: SetMaker,
): Part {
  const decision = decisions.get(key);
  const part = {
    key,
    why: one.reason,
    alternatives: [],
    nearest,
    text: one.text,
  };
  const bare = { line: one.line, text: one.text, forSale: false, confidence: 1 } as const;
  switch (decision?.kind) {
    case 'strike':
      return { ...part, state: 'struck', match: null };
    case 'own':
      return { ...part, state: 'own', match: null };
    case 'thing': {
      const match = thing(bare, decision.id);
      return { ...part, state: 'understood', match, why: null };
    }
    case 'set': {
      const match = asSet(bare, decision.id, makeSet);
      return { ...part, state: match === null ? 'unknown' : 'understood', match };
    }
    case 'right':
    case undefined:
      return { ...part, state: 'unknown', match: null };
  }
}

/** Count, mass and price were said of whatever it is; a size worked out for the other thing was not. */
function asThing(match: ImportMatch, id: string): ThingMatch {
  if (match.kind === 'set') return thing(match, id);
  const { size: _, handleMm: __, grams, ...rest } = match;
  return {
    ...rest,
    catalogueId: id,
    confidence: 1,
    ...(grams !== undefined && match.weighed ? { grams } : {}),
  };
}

function thing(
  { line, text, forSale }: Pick<ImportMatch, 'line' | 'text' | 'forSale'>,
  id: string,
): ThingMatch {
  return {
    kind: 'thing',
    line,
    text,
    catalogueId: id,
    copies: 1,
    weighed: false,
    forSale,
    confidence: 1,
    alternatives: [],
  };
}

function asSet(
  { line, text, forSale }: Pick<ImportMatch, 'line' | 'text' | 'forSale'>,
  id: string,
  makeSet: SetMaker,
): ImportMatch | null {
  const set = makeSet(id);
  return set === null ? null : { kind: 'set', line, text, forSale, confidence: 1, ...set };
}
