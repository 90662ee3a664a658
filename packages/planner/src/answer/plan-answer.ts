/**
 * What a plan says, in units people read, ready for a screen, a terminal or JSON (docs/answers.md). Every number here has
 * been re-checked (M8). Chances are probabilities 0..1; masses whole grams; money whole cents.
 */
export interface PlanAnswer {
  readonly schema: 'waymend.plan/1';
  readonly trip: TripAnswer;
  readonly aim: AimAnswer;
  readonly status: 'proven' | 'within';
  /** Loss that could at most still be avoided, relative to the plan's own loss; 0 when proven. */
  readonly gap: number;
  readonly stoppedBy?: string;
  readonly kit: KitAnswer;
  readonly stayHome: readonly HomeAnswer[];
  readonly gaps: readonly GapAnswer[];
  readonly buy: readonly BuyAnswer[];
  readonly shop: ShopAnswer;
  readonly swaps: readonly SwapAnswer[];
  readonly unaided: UnaidedAnswer;
  readonly comparisons: readonly ComparisonAnswer[];
  readonly load: LoadAnswer;
  readonly standing: StandingAnswer;
  readonly warnings: readonly string[];
}

export interface TripAnswer {
  readonly id: string;
  readonly name: string;
  readonly vehicle: string;
  readonly km: number;
  readonly days: number;
  readonly people: readonly { readonly name: string; readonly skill: number }[];
  /** Expected failures by group, and expected failures that stop the drive. */
  readonly expected: readonly {
    readonly group: string;
    readonly title: string;
    readonly failures: number;
    readonly stopping: number;
  }[];
}

export type AimAnswer =
  | { readonly kind: 'best-chance'; readonly limitGrams: number | null }
  | { readonly kind: 'least-mass'; readonly chance: number }
  | { readonly kind: 'must-do'; readonly jobs: readonly string[] };

export interface KitAnswer {
  readonly massGrams: number;
  readonly volumeMl: number;
  /** Share of the mass that rests on estimates nobody has weighed. */
  readonly estimatedGrams: number;
  readonly items: readonly KitItem[];
}

export interface KitItem {
  /** Belonging id (one line for all its copies that come). */
  readonly id: string;
  readonly name: string;
  /** All copies together. */
  readonly grams: number;
  readonly copies: number;
  readonly weighed: boolean;
  /** Chance of driving home unaided that is lost if all these copies stay home. */
  readonly worth: number;
  /** Jobs that could no longer be done. */
  readonly jobs: readonly JobRef[];
  readonly reason: 'worth' | 'floor' | 'pinned' | 'must-do' | 'in-set';
  readonly berth: string | null;
  readonly bought: boolean;
}

export interface JobRef {
  readonly id: string;
  readonly title: string;
}

export interface HomeAnswer {
  readonly id: string;
  readonly name: string;
  readonly grams: number;
  readonly copies: number;
  /** Best chance it could add to this kit by itself, and per kilogram. */
  readonly couldAdd: number;
  readonly perKilogram: number;
  /** Least company it needs from what stays home to add anything, when alone it adds nothing. */
  readonly needs: readonly string[];
  readonly why:
    | 'adds-nothing'
    | 'over-the-limit'
    | 'not-ready'
    | 'not-understood'
    | 'never'
    | 'double'
    | 'does-not-fit';
}

export interface GapAnswer {
  /** Failure id. */
  readonly failure: string;
  readonly title: string;
  readonly group: string;
  readonly reason: 'tools' | 'parts' | 'skill' | 'people' | 'trust' | 'nothing-helps' | 'floor';
  /** The reason in a sentence. */
  readonly words: string;
  /** Expected events on this trip that this gap leaves without an answer. */
  readonly expected: number;
  /** Chance of driving home unaided that closing the gap would add. */
  readonly worth: number;
  readonly cures: readonly CureAnswer[];
}

export interface CureAnswer {
  readonly kind: 'carry' | 'buy' | 'make-ready' | 'renew-at-home' | 'learn' | 'bring-a-person';
  readonly words: string;
  readonly items: readonly string[];
  readonly grams: number;
  readonly cents: number;
  /** What it is best at, among this gap's cures. */
  readonly best: readonly ('grams' | 'money')[];
}

export interface BuyAnswer {
  readonly id: string;
  readonly name: string;
  readonly grams: number;
  readonly cents: number;
  readonly worth: number;
  readonly jobs: readonly JobRef[];
}

/** Money, and what the garage lists for sale and the plan leaves in the shop. */
export interface ShopAnswer {
  /** What the budget may go on: the whole catalogue, or only what the garage lists. */
  readonly from: 'catalogue' | 'listed';
  readonly budgetCents: number;
  readonly spentCents: number;
  readonly left: readonly {
    readonly id: string;
    readonly name: string;
    readonly grams: number;
    readonly cents: number;
    /** Chance that it would add to this kit by itself. */
    readonly couldAdd: number;
    /** Least company it needs to add anything, when alone it adds nothing. */
    readonly needs: readonly string[];
    readonly why: 'over-a-limit' | 'adds-nothing-here' | 'no-job-needs-it';
  }[];
}

export interface SwapAnswer {
  readonly id: string;
  readonly name: string;
  readonly grams: number;
  readonly with: string;
  readonly withName: string;
  readonly savedGrams: number;
  readonly cents: number;
  readonly owned: boolean;
}

export interface UnaidedAnswer {
  /** Chance of driving home unaided with nothing aboard, with everything owned, with this kit. */
  readonly empty: number;
  readonly everything: number;
  readonly kit: number;
  /** Where 90 of 100 beliefs about the rates put the chance of this kit (M11). */
  readonly low: number;
  readonly high: number;
  /** What rests on the spares bound of M5: exact chance minus the stated one. */
  readonly sparesBound: number;
  readonly words: string;
}

export interface ComparisonAnswer {
  readonly kind: 'nothing' | 'everything' | 'boxed-set' | 'kit';
  readonly title: string;
  readonly massGrams: number;
  readonly pieces: number;
  readonly unaided: number;
  /** Limits it breaks, in words. */
  readonly breaks: readonly string[];
}

export interface LoadAnswer {
  readonly front: Margin;
  readonly rear: Margin;
  readonly gross: Margin;
  readonly roof: Margin | null;
  readonly tyres: { readonly front: Margin; readonly rear: Margin } | null;
  readonly berths: readonly (Margin & { readonly id: string; readonly name: string })[];
}

export interface Margin {
  readonly kg: number;
  readonly limitKg: number | null;
  readonly marginKg: number | null;
}

/** Where the owner stands, and the one step that helps most. */
export interface StandingAnswer {
  readonly stage: 'bare' | 'boxed' | 'pile' | 'fitted';
  readonly words: string;
  readonly coverage: number;
  readonly deadWeightGrams: number;
  readonly doubles: number;
  readonly missingSizes: readonly string[];
  readonly step: string;
}
