/** Belongings read with less confidence than this are shown for a second look. */
export const DOUBTFUL = 0.75;

/** One belonging understood from a list. */
export interface ThingMatch {
  readonly kind: 'thing';
  /** 1-based line of the list, or row of the table. */
  readonly line: number;
  /** The line as typed. */
  readonly text: string;
  readonly catalogueId: string;
  readonly copies: number;
  /** Real size where the catalogue has none of it; `grams` is then worked out from its neighbours. */
  readonly size?: string;
  readonly handleMm?: number;
  /** Mass of one piece: as typed (`weighed`), or worked out for an own size. */
  readonly grams?: number;
  readonly weighed: boolean;
  /** Price of one, in the garage's currency. */
  readonly price?: number;
  readonly forSale: boolean;
  /** Berth or bag as named in a table; `importInto` looks it up. */
  readonly location?: string;
  readonly note?: string;
  /** 0..1. */
  readonly confidence: number;
  /** What to look at again, in words. */
  readonly why?: string;
  /** Other catalogue ids it may be. */
  readonly alternatives: readonly string[];
}

/** A boxed set understood from a list: it becomes one belonging with its contents inside. */
export interface SetMatch {
  readonly kind: 'set';
  readonly line: number;
  readonly text: string;
  readonly setId: string;
  readonly title: string;
  readonly caseGrams: number;
  readonly contents: readonly { readonly is: string; readonly copies: number }[];
  readonly price?: number;
  readonly forSale: boolean;
  readonly location?: string;
  readonly note?: string;
  readonly confidence: number;
  readonly why?: string;
}

export type ImportMatch = ThingMatch | SetMatch;

/** A line, or the part of one, that was not understood. */
export interface NotUnderstood {
  readonly line: number;
  readonly text: string;
  /** One plain sentence: why, and what to do. */
  readonly reason: string;
  /** The nearest thing of the catalogue, by name; null when nothing is near. */
  readonly suggestion: string | null;
}

/** Everything a list said. Each line that is not blank is in exactly one or more of the three: nothing is dropped. */
export interface ImportReading {
  readonly matches: readonly ImportMatch[];
  readonly notUnderstood: readonly NotUnderstood[];
  readonly headings: readonly { readonly line: number; readonly text: string }[];
}
