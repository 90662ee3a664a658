import type { PhraseIndex } from './phrase-index.ts';
import type { ListUnit, NumberToken, Token } from './tokens.ts';
import { formsOf, isFiller, isModifier, opensAside } from './words.ts';

/** One word of a clause, in the form names are compared in. */
export interface ClauseWord {
  readonly form: string;
  /** How much not explaining it counts: less in brackets and after 'for', nothing in a remark. */
  readonly share: number;
  /** The same for finding names, where 'front' and 'set' count like other words. */
  readonly near: number;
  /** Below 1 when it was taken for a misspelling. */
  readonly sureness: number;
  readonly known: boolean;
  /** As typed. */
  readonly typed: string;
}

/** A number that may be a size or a length; a code is a T, E, M or cross number. */
export interface ClauseValue {
  readonly value: number;
  readonly unit: ListUnit | null;
  readonly inch: boolean;
  readonly fraction: string | null;
  readonly code: 'T' | 'E' | 'M' | '#' | null;
  /** End of a range that starts at `value`, and how it was typed when in inches. */
  readonly to: number | null;
  readonly toFraction: string | null;
  /** Before any word: '1/2 sockets 10 12', '3 sockets 10 mm'. */
  readonly leads: boolean;
}

/** What one clause of a line says, apart from what thing it is about. */
export interface Clause {
  readonly words: readonly ClauseWord[];
  readonly values: readonly ClauseValue[];
  readonly except: readonly ClauseValue[];
  /** Stated square drive, as marked ('1/2'). */
  readonly drive: string | null;
  readonly depth: 'shallow' | 'deep' | null;
  readonly copies: number | null;
  readonly pair: boolean;
  /** '94 piece'. */
  readonly pieces: number | null;
  /** First mass typed, g. */
  readonly grams: number | null;
  readonly inchHint: boolean;
}

const DRIVE_WORDS = new Set(['drive', 'dr', 'drv', 'sq', 'square', 'sqdr', 'sd']);
const INCH_WORDS = new Set(['imperial', 'af', 'sae', 'inch', 'inches', 'unf', 'unc']);
const DRIVE_SIZES = new Set(['1/4', '3/8', '1/2', '3/4']);
const SHALLOW = new Set(['shallow', 'normal', 'regular', 'standard', 'short']);
const MOST_COPIES = 500;

export function isDriveSize(fraction: string | null): fraction is string {
  return fraction !== null && DRIVE_SIZES.has(fraction);
}

/** Sorts the tokens of a clause into words, sizes, counts, masses and the drive. */
export function clauseOf(tokens: readonly Token[], index: PhraseIndex): Clause {
  const words: ClauseWord[] = [];
  const values: ClauseValue[] = [];
  const except: ClauseValue[] = [];
  let drive: string | null = null;
  let depth: Clause['depth'] = null;
  let copies: number | null = null;
  let pair = false;
  let pieces: number | null = null;
  let grams: number | null = null;
  let inchHint = false;
  let leavingOut = false;
  let aside = false;
  let ranging = false;

  const isDriveWord = (token: Token | undefined): boolean =>
    token?.kind === 'word' && DRIVE_WORDS.has(token.word);

  tokens.forEach((token, i) => {
    const next = tokens[i + 1];
    const before = tokens[i - 1];
    if (token.kind === 'mark') {
      if (token.mark === 'except') leavingOut = true;
      if (token.mark === 'and' && next?.kind === 'word') aside = false;
      ranging = token.mark === 'range';
      return;
    }
    if (token.kind === 'word') {
      ranging = false;
      if (opensAside(token.word) && i > 0) aside = true;
      if (DRIVE_WORDS.has(token.word)) {
        // 'square' also is a shape; beside a number it is the drive.
        if (before?.kind === 'number' || isDriveWord(before)) return;
      }
      if (INCH_WORDS.has(token.word)) {
        inchHint = true;
        return;
      }
      if (token.word === 'metric' || token.word === 'mm') return;
      if (token.word === 'pair' || token.word === 'pairs') pair = true;
      // 'long' also is said of ratchets and noses; only sockets have a depth.
      if (token.word === 'deep' || token.word === 'long') depth = 'deep';
      if (SHALLOW.has(token.word)) depth = 'shallow';
      if (isFiller(token.word)) return;
      const share = token.remark ? 0 : token.bracket ? 0.25 : aside ? 0.15 : 1;
      const joined = joinedWith(words.at(-1), before, token.word, index);
      if (joined !== null) {
        words[words.length - 1] = joined;
        return;
      }
      for (const form of formsOf(token.word)) {
        const found = index.resolve(form);
        const forms = found?.words ?? [form];
        for (const resolved of forms) {
          words.push({
            form: resolved,
            near: share,
            share: share * shareOf(resolved, token.word, found !== null),
            sureness: found?.sureness ?? 1,
            known: found !== null,
            typed: token.word,
          });
        }
      }
      return;
    }
    if (token.kind === 'number' && !token.remark) {
      if (token.unit === 'g') {
        grams ??= token.value;
        return;
      }
      if (token.unit === 'points') return;
      if (token.unit === 'pieces') {
        pieces ??= token.value;
        return;
      }
      if (isDriveSize(token.fraction) && isDriveWord(next) && drive === null) {
        drive = token.fraction;
        return;
      }
      const whole = Number.isInteger(token.value) && token.value >= 1 && token.value <= MOST_COPIES;
      // '(3)'
      if (
        token.bracket &&
        token.unit === null &&
        whole &&
        before?.bracket !== true &&
        next?.bracket !== true
      ) {
        copies ??= token.value;
        return;
      }
      const afterTimes = before?.kind === 'mark' && before.mark === 'times';
      const beforeTimes = next?.kind === 'mark' && next.mark === 'times';
      if (token.unit === null && whole && token.fraction === null) {
        if (token.spelt && (values.length === 0 || next?.kind === 'word')) {
          copies ??= token.value;
          return;
        }
        if (beforeTimes && isCountOf(token, tokens[i + 2])) {
          copies = token.value;
          return;
        }
        if (afterTimes && !isDimension(tokens[i - 2], token)) {
          copies = token.value;
          return;
        }
      }
    }
    if (token.remark) {
      if (token.kind === 'number' && token.unit === 'g') grams ??= token.value;
      return;
    }
    const value: ClauseValue = {
      value: token.value,
      unit: token.kind === 'number' ? token.unit : null,
      inch: token.kind === 'number' && token.inch,
      fraction: token.kind === 'number' ? token.fraction : null,
      code: token.kind === 'code' ? token.letter : null,
      to: null,
      toFraction: null,
      leads: words.length === 0,
    };
    const list = leavingOut ? except : values;
    const start = list.at(-1);
    if (ranging && start !== undefined && start.to === null) {
      list[list.length - 1] = {
        ...start,
        inch: start.inch || value.inch,
        to: value.value,
        toFraction: value.fraction,
        unit: start.unit ?? value.unit,
      };
    } else list.push(value);
    ranging = false;
  });
  return { words, values, except, drive, depth, copies, pair, pieces, grams, inchHint };
}

/** How a thing is counts less than what it is, and least where no name has the word. */
function shareOf(form: string, typed: string, known: boolean): number {
  if (!isModifier(form) && !isModifier(typed)) return 1;
  return known ? 0.3 : 0.1;
}

/** 'crow bar' where names say 'crowbar'. */
function joinedWith(
  last: ClauseWord | undefined,
  before: Token | undefined,
  word: string,
  index: PhraseIndex,
): ClauseWord | null {
  if (last === undefined || before?.kind !== 'word' || before.word !== last.typed) return null;
  const [form, more] = formsOf(last.typed + word);
  if (form === undefined || more !== undefined || index.weightOf(form) === 0) return null;
  return { form, near: last.near, share: last.near, sureness: 1, known: true, typed: word };
}

/** '2 x 13 mm' and '2x pliers' count; '4 x 100 mm' and '10x11' are dimensions. */
function isCountOf(count: NumberToken, what: Token | undefined): boolean {
  if (what === undefined || what.kind === 'word') return true;
  if (what.kind !== 'number') return what.kind === 'code';
  if (what.unit === null && what.fraction === null) return false;
  return count.value < 60 && !(what.unit === 'mm' && !what.inch && what.value >= 60 && what.value < 1000);
}

function isDimension(before: Token | undefined, after: NumberToken): boolean {
  if (before?.kind !== 'number' || before.unit !== null || before.fraction !== null) return false;
  return after.unit === null && before.value >= 1;
}
