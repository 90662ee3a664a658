import type { ImportReading } from '@waymend/garage/import/reading';
import type { Garage } from '@waymend/garage/record/schema';
import type { Suggested } from '../../../../worker/belongings/protocol.ts';
import { keepDraft, keptDraft } from './kept-draft.ts';
import type { Decisions } from './paper-lines.ts';

/** What lies on the paper: kept while the tab is open, so that a look elsewhere, or loading the page again, loses nothing. */
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
/** The garage whose draft it is; null until a sheet has asked. */
let owner: string | null = null;
const listeners = new Set<() => void>();

export const draftStore = {
  /** Brings back what was typed for this garage before the page was loaded again. */
  openFor: (garage: string): void => {
    if (owner === garage) return;
    owner = garage;
    kept = { ...BLANK, ...keptDraft(store(), garage) };
  },
  get: (): Draft => kept,
  set: (fields: Partial<Draft>): void => {
    kept = { ...kept, ...fields };
    if (owner !== null) keepDraft(store(), owner, kept);
    for (const listener of listeners) listener();
  },
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};

/** A browser may forbid it. */
function store(): Storage | null {
  try {
    return sessionStorage;
  } catch {
    return null;
  }
}
