import type { KnownSet } from './catalogue.ts';
import type { Clause } from './clause.ts';
import type { NotUnderstood, SetMatch } from './reading.ts';
import { formsOfText } from './words.ts';

/** Fewer pieces are a pair or a pack of one thing. */
const LEAST_PIECES = 8;
const SET_WORDS = new Set(['set', 'kit', 'box', 'case', 'roll', 'tool']);

/**
 * A boxed set by its number of pieces ('94 piece socket set') or by its whole name; listed as not understood, with the
 * nearest one, when the number is that of no set known. Null when the line is about no set.
 */
export function setOf(
  clause: Clause,
  sets: readonly KnownSet[],
  text: string,
  line: number,
): SetMatch | NotUnderstood | null {
  const words = new Set(clause.words.map(({ form }) => form));
  const { pieces } = clause;
  if (pieces === null || pieces < LEAST_PIECES || ![...words].some((word) => SET_WORDS.has(word))) {
    const named = sets.find(
      ({ title }) => !title.includes(',') && formsOfText(title).every((word) => words.has(word)),
    );
    return named === undefined ? null : match(named, text, line, 0.9);
  }
  const scored = sets
    .map((set) => ({
      set,
      count: Number(/(\d+) pieces/.exec(set.title)?.[1] ?? 0),
      shared: shared(set, words),
    }))
    .filter(({ count }) => count > 0);
  const [exact] = scored.filter(({ count }) => count === pieces).sort((a, b) => b.shared - a.shared);
  if (exact !== undefined) return match(exact.set, text, line, exact.shared > 0 ? 0.95 : 0.8);
  const [near] = scored
    .filter(({ shared: some }) => some > 0)
    .sort((a, b) => Math.abs(a.count - pieces) - Math.abs(b.count - pieces));
  return {
    line,
    text,
    reason: `no set of ${pieces} pieces is known; type what is in it, like "1/2 sockets 10-24", or choose the nearest set`,
    suggestion: near?.set.title ?? null,
  };
}

/** Words of the line that tell what the set is about. */
function shared(set: KnownSet, words: ReadonlySet<string>): number {
  return formsOfText(set.title).filter((word) => words.has(word) && word !== 'set').length;
}

function match(set: KnownSet, text: string, line: number, confidence: number): SetMatch {
  return {
    kind: 'set',
    line,
    text,
    setId: set.id,
    title: set.title,
    caseGrams: set.caseGrams,
    contents: set.contents.map(({ is, copies }) => ({ is, copies })),
    forSale: false,
    confidence,
    why: 'the contents are those such boxes usually have; strike out what is not in yours',
  };
}
