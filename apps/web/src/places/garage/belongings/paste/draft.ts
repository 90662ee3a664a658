import type { ImportReading } from '@waymend/garage/import/reading';
import type { Garage } from '@waymend/garage/record/schema';
import type { Suggested } from '../../../../worker/belongings/protocol.ts';
import type { Decisions } from './paper-lines.ts';

/** What lies on the paper: kept while the page is open, so that a look elsewhere loses nothing. */
export interface Draft {
  readonly text: string;
  /** A table that came as a file, instead of typed text. */
  readonly file: {
    readonly name: string;
    readonly reading: ImportReading;
    readonly suggested: Readonly<Record<string, Suggested>>;
  } | null;
  readonly decisions: Decisions;
  /** Words taught here; they are kept with the things, in the same step. */
  readonly taught: Garage['words'];
}

export const BLANK: Draft = { text: '', file: null, decisions: new Map(), taught: {} };

let kept: Draft = BLANK;
const listeners = new Set<() => void>();

export const draftStore = {
  get: (): Draft => kept,
  set: (fields: Partial<Draft>): void => {
    kept = { ...kept, ...fields };
    for (const listener of listeners) listener();
  },
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};
