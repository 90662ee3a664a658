import { chooseDescribed } from './choose-described.ts';
import type { Choice, Item } from './choose-sized.ts';
import { chooseSized } from './choose-sized.ts';
import type { Clause, ClauseWord } from './clause.ts';
import { isDriveSize } from './clause.ts';
import type { Phrase, PhraseIndex } from './phrase-index.ts';
import type { SizedClass, Traits } from './traits.ts';
import { isModifier, stem } from './words.ts';

/** What a clause was taken for. */
export type ClauseMatch =
  | {
      readonly kind: 'found';
      readonly items: readonly Item[];
      /** 0..1: how well the words fit, and how well the numbers tell which one it is. */
      readonly confidence: number;
      readonly copies: number | null;
      readonly why?: string;
      /** Other things it may be, best first. */
      readonly alternatives: readonly string[];
      /** Words of the name it was found by; none when the numbers told. */
      readonly named: readonly string[];
    }
  | {
      readonly kind: 'unknown';
      readonly reason: string;
      readonly suggestion: string | null;
      readonly closeness: number;
    };

/** Below this a line is listed as not understood, with the guess as its suggestion. */
export const LEAST_CONFIDENCE = 0.6;
/** A suggestion further off than this would only mislead. */
const LEAST_SUGGESTION = 0.25;
const MOST_PHRASES = 10;

interface Ranked {
  readonly phrase: Phrase;
  readonly covered: number;
  readonly score: number;
}

/** Matches one clause: the name first, then which of the things of that name. */
export function matchClause(clause: Clause, index: PhraseIndex): ClauseMatch {
  const coded = byCode(clause, index);
  if (coded !== null) return coded;
  const tries: (Extract<ClauseMatch, { kind: 'found' }> & { readonly phrase: Phrase })[] = [];
  let missing: { readonly reason: string; readonly phrase: Phrase; readonly score: number } | null = null;
  for (const { phrase, covered } of rank(clause.words, index)) {
    const choice = choose(clause, phrase, index);
    const named = phraseScore(clause.words, phrase, choice, covered, index);
    if ('missing' in choice) {
      if (missing === null || named > missing.score)
        missing = { reason: choice.missing, phrase, score: named };
      continue;
    }
    tries.push({
      kind: 'found',
      items: choice.items,
      confidence: Math.min(1, named * choice.sureness),
      copies: choice.copies ?? null,
      ...(choice.why === undefined ? {} : { why: choice.why }),
      alternatives: phrase.ids.filter((id) => !choice.items.some((item) => item.id === id)).slice(0, 3),
      named: phrase.words,
      phrase,
    });
  }
  const [best] = tries.sort(
    (a, b) => Number(b.phrase.own) - Number(a.phrase.own) || b.confidence - a.confidence,
  );
  // A name that fits as well but lacks its size is the honest reading: ask rather than take something else.
  if (
    missing !== null &&
    missing.score >= LEAST_CONFIDENCE &&
    (best === undefined || missing.score > best.confidence + 0.05)
  ) {
    return {
      kind: 'unknown',
      reason: missing.reason,
      suggestion: nameOf(missing.phrase.ids[0], index),
      closeness: missing.score,
    };
  }
  if (best !== undefined && best.confidence >= LEAST_CONFIDENCE) {
    const { phrase: _, ...found } = best;
    return found;
  }
  const guess =
    best === undefined || best.confidence < LEAST_SUGGESTION ? null : nameOf(best.items[0]?.id, index);
  return {
    kind: 'unknown',
    reason: reasonFor(clause.words, guess),
    suggestion: guess,
    closeness: best?.confidence ?? 0,
  };
}

function reasonFor(words: readonly ClauseWord[], guess: string | null): string {
  const strange = [
    ...new Set(words.filter(({ known, share }) => !known && share > 0.1).map(({ typed }) => typed)),
  ];
  if (words.length === 0) return 'there is no name here, only numbers; write what it is';
  if (strange.length > 0) {
    const listed = strange.slice(0, 3).map((word) => `"${word.slice(0, 30)}"`);
    return `${listed.join(', ')} ${listed.length === 1 ? 'is' : 'are'} not known here; say it in other words, or teach the word once`;
  }
  return guess === null
    ? 'the words are known but not what they mean together; say it in other words'
    : 'it is not sure enough that this is meant; say it in other words';
}

function nameOf(id: string | undefined, index: PhraseIndex): string | null {
  const entry = id === undefined ? undefined : index.traits.get(id)?.entry;
  if (entry === undefined) return null;
  return entry.size === undefined ? entry.name : `${entry.name}, ${entry.size}`;
}

/** Names that share words with the clause, those that cover it best first. */
function rank(words: readonly ClauseWord[], index: PhraseIndex): readonly Ranked[] {
  const sureness = new Map<string, number>();
  for (const word of words) {
    // A word of a remark names nothing.
    if (word.near > 0)
      sureness.set(
        word.form,
        Math.max(sureness.get(word.form) ?? 0, word.sureness * Math.min(1, 0.5 + word.near)),
      );
  }
  const ids = new Set([...sureness.keys()].flatMap((word) => index.byWord.get(word) ?? []));
  const ranked: Ranked[] = [];
  for (const id of ids) {
    const phrase = index.phrases[id];
    if (phrase === undefined || phrase.weight === 0) continue;
    const held = phrase.words.reduce(
      (sum, word) => sum + index.weightOf(word) * (sureness.get(word) ?? 0),
      0,
    );
    const covered = held / phrase.weight;
    ranked.push({ phrase, covered, score: phrase.sureness * covered ** 1.5 * held });
  }
  return ranked
    .sort((a, b) => Number(b.phrase.own) - Number(a.phrase.own) || b.score - a.score)
    .slice(0, MOST_PHRASES);
}

/** How well a name fits the words: all of the name is there, and little of the line is left unexplained. */
function phraseScore(
  words: readonly ClauseWord[],
  phrase: Phrase,
  choice: Choice,
  covered: number,
  index: PhraseIndex,
): number {
  const explained = new Set(phrase.words);
  const first = 'items' in choice ? choice.items[0]?.id : phrase.ids[0];
  for (const word of index.traits.get(first ?? '')?.words ?? []) explained.add(word);
  const also = index.vocabulary.get(first ?? '');
  let total = 0;
  let told = 0;
  for (const { form, share, known } of words) {
    // An unknown word may be what matters most.
    const weight = share * (known ? index.weightOf(form) : UNKNOWN_WEIGHT);
    total += weight;
    if (explained.has(form)) told += weight;
    // Said of it, though not in this name: 'drive shaft CV'.
    else if (also?.has(form) === true) told += weight / 2;
  }
  const spoken = total === 0 ? 1 : told / total;
  return phrase.sureness * covered ** 1.5 * (0.3 + 0.7 * spoken);
}

/** Weight of a word that stands in no name: about that of a rare one. */
const UNKNOWN_WEIGHT = 5;

function choose(clause: Clause, phrase: Phrase, index: PhraseIndex): Choice {
  const traits = phrase.ids.flatMap((id) => index.traits.get(id) ?? []);
  const of = classOf(traits, clause);
  if (of !== null) {
    const choice = chooseSized(clause, of, index.byClass.get(of) ?? []);
    if (!('missing' in choice) || !TELLABLE.has(of)) return choice;
    const sized = traits.filter((one) => one.class === of);
    return chooseDescribed(clause, sized, phrase.words, index.weightOf);
  }
  return chooseDescribed(clause, traits, phrase.words, index.weightOf);
}

/** Without a size the usual one is meant: people write 'cross-head screwdriver'. */
const TELLABLE: ReadonlySet<SizedClass> = new Set(['cross-driver', 'slot-driver']);

/** The class of a name's first meaning, when that comes in sizes. */
function classOf(traits: readonly Traits[], clause: Clause): SizedClass | null {
  const [first] = traits;
  if (first === undefined) return null;
  // 'screwdriver' alone: the kind of number tells.
  if (first.class === 'cross-driver' && clause.values.every(({ code }) => code !== '#')) {
    const slot = traits.find((t) => t.class === 'slot-driver');
    return slot !== undefined && clause.values.length > 0 ? 'slot-driver' : first.class;
  }
  return first.class;
}

/** T and E numbers, and a drive with sizes, say what is meant by themselves: 'T-bits T20-T50', '36 mm 1/2 drive'. */
function byCode(clause: Clause, index: PhraseIndex): ClauseMatch | null {
  const has = (...words: readonly string[]): boolean =>
    clause.words.some(({ form }) => words.map(stem).includes(form));
  const codes = new Set(clause.values.map(({ code }) => code));
  const of: SizedClass | null =
    codes.has('E') && !has('key', 'wrench')
      ? 'external-lobe'
      : codes.has('T') && !has('key', 'screwdriver', 'driver', 'handle')
        ? 'lobe-bit'
        : null;
  const headless = clause.words.every(
    ({ known, share, form }) =>
      share < 0.5 || isModifier(form) || form === 'deep' || form === 'shallow' || !known,
  );
  const driven =
    clause.drive !== null ||
    (clause.depth !== null && clause.values.some(({ fraction }) => isDriveSize(fraction)));
  const bare =
    driven &&
    clause.values.length > 0 &&
    headless &&
    clause.words.every(({ known, share }) => known || share < 0.5);
  const which = of ?? (bare ? 'socket' : null);
  if (which === null) return null;
  const choice = chooseSized(clause, which, index.byClass.get(which) ?? []);
  if ('missing' in choice) return null;
  const strange = clause.words.filter(({ known, share }) => !known && share >= 0.5).length;
  return {
    kind: 'found',
    items: choice.items,
    confidence: choice.sureness * (of === null ? 0.8 : 0.97) * 0.75 ** strange,
    copies: choice.copies ?? null,
    ...(choice.why === undefined ? {} : { why: choice.why }),
    alternatives: [],
    named: [],
  };
}
