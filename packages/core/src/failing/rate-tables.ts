/**
 * The constants that the rates are computed from, as the trade prints them (per 10,000 km, degrees Celsius, years). Core
 * knows no figures of its own: the catalogue holds them with their basis and the planner passes them in. The shapes here
 * are what core reads; the catalogue's records fit them without core naming the catalogue.
 */

export type Surface = 'sealed' | 'gravel' | 'corrugated' | 'rock' | 'sand';
export type Stones = 'none' | 'gravel' | 'sharp' | 'staked';
export type Care = 'fresh' | 'good' | 'average' | 'neglected';
export type Driver = 'gentle' | 'average' | 'hard';
export type CrossingDepth = 'belowHub' | 'hubToSill' | 'sillToBonnet' | 'aboveIntake';

/** Where a figure comes from; the twin of the catalogue's basis. */
export type RateBasis =
  | { readonly kind: 'source'; readonly cite: string }
  | { readonly kind: 'computed'; readonly from: string }
  | { readonly kind: 'common-practice' }
  | { readonly kind: 'estimate'; readonly why: string }
  | { readonly kind: 'recalled'; readonly of: string };

/** All of `all`, at least one of `any` (when given), none of `none`. */
export interface FeatureCondition {
  readonly all?: readonly string[];
  readonly any?: readonly string[];
  readonly none?: readonly string[];
}

export interface GroupRates {
  readonly id: string;
  readonly title: string;
  /** Events per 10,000 km. */
  readonly per10000km: Readonly<Record<Surface, number>>;
  readonly immobilises: number;
  readonly restored: number;
  readonly basis: RateBasis;
}

export interface FailureShare {
  readonly id: string;
  readonly group: string;
  readonly title: string;
  /** Weight in its group, before features are looked at. */
  readonly share: number;
  readonly when?: FeatureCondition;
  /** Override the group's. */
  readonly immobilises?: number;
  readonly restored?: number;
}

/** Multipliers by group; a group that is not named keeps its rate. */
export type GroupFactors = Readonly<Partial<Record<string, number>>>;

interface Head {
  readonly id: string;
  readonly title: string;
  readonly basis: RateBasis;
}

interface ConditionalHead extends Head {
  readonly when?: FeatureCondition;
}

/** A factor that is either there or not. */
export interface FlagFactor extends ConditionalHead {
  readonly by: GroupFactors;
  /** What it does to the one sort of part it is really about; shown, not multiplied with. */
  readonly onPart?: { readonly part: string; readonly factor: number };
}

/** A factor read off a scale: the first step whose `upTo` is not below the reading. */
export interface StepFactor extends ConditionalHead {
  readonly steps: readonly { readonly upTo: number; readonly by: GroupFactors }[];
}

export interface WordFactor<Word extends string> extends ConditionalHead {
  readonly words: Readonly<Record<Word, GroupFactors>>;
}

/** Events on top of the rates per distance: `each` for every one counted. */
export interface AddedEvents extends ConditionalHead {
  readonly each: number;
  readonly counts: 'fill' | '10,000 km of dusty leg' | 'day' | 'camp night' | 'cold night';
  readonly group: string;
  /** The one failure that grows; absent: shared out like the rest of the group. */
  readonly failure?: string;
}

export interface FactorTables {
  /** m(iri) = exp(slope x (iri - reference)), above `linearAboveIri` its tangent; counts as m(iri) / m(surface's iri). */
  readonly roughness: Head & {
    readonly groups: readonly string[];
    readonly slope: number;
    readonly referenceIri: number;
    readonly linearAboveIri: number;
    readonly surfaceIri: Readonly<Record<Surface, number>>;
  };
  /** (odometer / (ordinary km a year x age)) ^ exponent. */
  readonly accumulatedKm: Head & {
    readonly groups: readonly string[];
    readonly exponent: number;
    readonly ordinaryKmPerYear: number;
    readonly assumedAgeYears: number;
    readonly leastKm: number;
  };
  /** 1 + perYear x (age - reference), kept between `least` and `greatest`. */
  readonly vehicleAge: Head & {
    readonly groups: readonly string[];
    readonly perYear: number;
    readonly referenceYears: number;
    readonly least: number;
    readonly greatest: number;
  };
  /** Reads years. */
  readonly batteryAge: StepFactor;
  readonly care: WordFactor<Care>;
  readonly recentWork: Head & { readonly factor: number };
  /** (mass / rated) ^ exponent by group. */
  readonly load: Head & { readonly exponents: GroupFactors };
  readonly driver: WordFactor<Driver>;
  readonly corrugationPace: FlagFactor;
  /** Read degrees Celsius: the highest and the lowest air temperature of the leg. */
  readonly heat: StepFactor;
  readonly cold: StepFactor;
  /** Reads metres above the sea. */
  readonly altitude: StepFactor;
  readonly stones: WordFactor<Stones>;
  readonly dust: FlagFactor;
  readonly liftKit: FlagFactor & { readonly aboveMm: number };
  readonly largeTyres: FlagFactor & { readonly abovePct: number };
  readonly lockersOnRock: FlagFactor;
  readonly roofOverload: FlagFactor;
  readonly addedCircuits: Head & {
    readonly group: string;
    readonly eachPer10000km: Readonly<Record<Surface, number>>;
  };
  readonly added: readonly AddedEvents[];
  readonly crossings: Head & {
    readonly each: Readonly<Record<CrossingDepth, number>>;
    /** Shares by group; they sum to 1. */
    readonly split: GroupFactors;
  };
}

export interface RateTables {
  readonly groups: readonly GroupRates[];
  readonly failures: readonly FailureShare[];
  readonly factors: FactorTables;
}
