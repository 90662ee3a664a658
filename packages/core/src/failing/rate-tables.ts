/**
 * The constants that the rates are computed from, as the trade prints them (per 10,000 km, degrees Celsius, years). Core
 * knows no figures of its own: the catalogue holds them with their basis and the planner passes them in. The shapes here
 * are what core needs; the catalogue's records fit them without being named.
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

interface Printed {
  readonly basis: RateBasis;
}

/** A multiplier for some groups (all of them when `groups` is absent). */
interface ForGroups extends Printed {
  readonly groups?: readonly string[];
}

/** Multiplies where the value passes a threshold in `unit`. */
export interface ThresholdFactor extends ForGroups {
  /** Degrees Celsius, or metres of altitude. */
  readonly threshold: number;
  readonly factor: number;
  /** In place of `factor` where the tyres run soft. */
  readonly softTyres?: number;
}

/** A multiplier that a modification brings. `when` absent: always; `surface` absent: everywhere. */
export interface ModificationFactor extends ForGroups {
  readonly id: string;
  readonly title: string;
  readonly when?: FeatureCondition;
  /** More than this body lift, mm. */
  readonly liftMoreThanMm?: number;
  /** Tyres more than this over the original diameter, per cent. */
  readonly oversizeMoreThanPct?: number;
  /** The roof carries more than its rating. */
  readonly roofOverloaded?: true;
  readonly surface?: Surface;
  readonly factor: number;
}

export interface RateTables {
  readonly groups: readonly GroupRates[];
  readonly failures: readonly FailureShare[];
  readonly factors: FactorTables;
}

export interface FactorTables {
  /** Multiplier at a roughness (IRI, m/km), and the IRI that each surface class stands for. */
  readonly roughness: ForGroups & {
    readonly points: readonly { readonly iri: number; readonly factor: number }[];
    readonly surfaceIri: Readonly<Record<Surface, number>>;
  };
  /** (km / referenceKm) ^ exponent. */
  readonly distance: ForGroups & {
    readonly exponent: number;
    readonly referenceKm: number;
    readonly least: number;
    readonly most: number;
  };
  /** 1 + perYear x (age - referenceYears). */
  readonly age: ForGroups & {
    readonly perYear: number;
    readonly referenceYears: number;
    readonly least: number;
    readonly most: number;
  };
  /** The last step whose `fromYears` the battery has reached. */
  readonly batteryAge: ForGroups & {
    readonly steps: readonly { readonly fromYears: number; readonly factor: number }[];
  };
  readonly care: ForGroups & { readonly factor: Readonly<Record<Care, number>> };
  /** On the groups whose parts were disturbed lately. */
  readonly recentWork: Printed & { readonly factor: number };
  /** (mass / rated) ^ exponent, on the worse axle or on the gross mass. */
  readonly load: readonly (Printed & {
    readonly groups: readonly string[];
    readonly exponent: number;
    readonly of: 'axle' | 'gross';
  })[];
  readonly pace: ForGroups & { readonly factor: number };
  readonly heat: readonly ThresholdFactor[];
  readonly cold: readonly ThresholdFactor[];
  /** Events of one failure per night below so many degrees Celsius without winter fuel. */
  readonly waxing?: Printed & {
    readonly group: string;
    readonly failure: string;
    readonly when: FeatureCondition;
    readonly below: number;
    readonly perNight: number;
  };
  readonly altitude: readonly ThresholdFactor[];
  readonly stones: ForGroups & { readonly factor: Readonly<Record<Stones, number>> };
  readonly dust: readonly (ForGroups & { readonly factor: number })[];
  /** Filter events per 1,000 km of dust, and per doubtful fill. */
  readonly dustEvents: Printed & {
    readonly group: string;
    readonly failure?: string;
    readonly per1000km: number;
  };
  readonly fillEvents: Printed & {
    readonly group: string;
    readonly failure?: string;
    readonly perFill: number;
  };
  /** Extra events per added circuit per 10,000 km at `surface`; elsewhere in proportion to the group's base rate. */
  readonly circuits: Printed & {
    readonly group: string;
    readonly per10000km: number;
    readonly surface: Surface;
  };
  readonly modifications: readonly ModificationFactor[];
  readonly driver: ForGroups & { readonly factor: Readonly<Record<Driver, number>> };
  /** Events per year of standing, and per camp night with a fridge and no solar. */
  readonly perDay: Printed & {
    readonly group: string;
    readonly perYear: number;
    readonly perCampNight: number;
    readonly campNightWhen: FeatureCondition;
  };
  /** Events per crossing by depth, and the groups they fall on. */
  readonly crossing: Printed & {
    readonly events: Readonly<Record<CrossingDepth, number>>;
    readonly split: readonly { readonly group: string; readonly share: number }[];
  };
}
