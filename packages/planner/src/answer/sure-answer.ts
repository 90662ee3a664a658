/** How sure the plan is, and what would make it surer (M11). Chances 0..1, grams, cents. */
export interface SureAnswer {
  readonly schema: 'waymend.sure/1';
  readonly trip: string;
  readonly seed: number;
  /** Beliefs about the rates for which the best kit was looked for; `planned`: for how many of them there is one. */
  readonly draws: number;
  readonly planned: number;
  /** The planned kit's chance with the planned rates, and where 90 of 100 beliefs put it. */
  readonly chance: SureBand;
  /** The same when every group of failures is better or worse than thought at once. */
  readonly together: SureBand;
  readonly words: string;
  readonly items: readonly SureItem[];
  readonly whatIf: readonly WhatIf[];
  /** What to measure first: most gained by knowing. */
  readonly measureNext: readonly MeasureNext[];
  /** Assumed sizes that were not looked into because less was at stake, and how many of them. */
  readonly notLookedInto: number;
  readonly prevent: readonly Prevention[];
}

export interface SureBand {
  readonly chance: number;
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

export interface SureItem {
  readonly id: string;
  readonly name: string;
  readonly grams: number;
  readonly owned: boolean;
  readonly inKit: boolean;
  /** Of the draws, those in whose best kit it is. */
  readonly share: number;
  readonly how: 'sure' | 'likely' | 'taste';
}

export interface WhatIf {
  readonly words: string;
  /** Every rate so many times the planned one. */
  readonly times: number;
  /** Of the planned kit, and of the kit that would be best then; null when there is none. */
  readonly chance: number;
  readonly best: number | null;
  readonly joins: readonly string[];
  readonly leaves: readonly string[];
}

export interface MeasureNext {
  readonly joint: string;
  readonly title: string;
  readonly assumed: string;
  /** Chance gained on average by knowing it before choosing. */
  readonly gain: number;
  /** What to bring to the vehicle. */
  readonly how: string;
  readonly others: readonly {
    readonly size: string;
    /** How likely it is (estimate). */
    readonly likely: number;
    /** Chance of the planned kit, and of the best one, if it is so. */
    readonly planned: number;
    readonly best: number;
    /** What the best kit would bring besides. */
    readonly joins: readonly string[];
  }[];
}

export interface Prevention {
  readonly failure: string;
  readonly title: string;
  readonly what: string;
  readonly cents: number;
  readonly gain: number;
}
