import type { ImportMatch } from '@waymend/garage/import/reading';
import type { PaperLine } from './paper-lines.ts';

/** What pressing the button would add, and what would be left on the paper. */
export interface Tally {
  readonly matches: readonly ImportMatch[];
  /** Texts of own things. */
  readonly own: readonly string[];
  /** Things that will be added: a run of sizes counts each, a boxed set is one. */
  readonly adds: number;
  readonly doubtful: number;
  readonly unknown: number;
  readonly struck: number;
  /** Lines that stay because part of them was not understood; only that part. */
  readonly left: readonly string[];
}

export function tallyOf(lines: readonly PaperLine[]): Tally {
  const parts = lines.flatMap((line) => line.parts);
  const matches = parts.flatMap(({ match }) => (match === null ? [] : [match]));
  const own = parts.filter(({ state }) => state === 'own').map(({ text }) => text);
  const unknown = parts.filter(({ state }) => state === 'unknown');
  return {
    matches,
    own,
    adds: matches.length + own.length,
    doubtful: parts.filter(({ state }) => state === 'doubtful').length,
    unknown: unknown.length,
    struck: parts.filter(({ state }) => state === 'struck').length,
    left: unknown.map(({ text }) => text),
  };
}
