import type { Basis } from '../shape/basis.ts';
import type { Condition, GroupId, Surface } from '../shape/words.ts';

/**
 * What makes trouble more or less likely than the plain rates of the failure groups. Data only: core/failing computes, and
 * its tables have these shapes. A group that is not named keeps its rate.
 */
export interface ForGroups {
  readonly groups: readonly GroupId[];
  readonly basis: Basis;
}

/** Factor 1 where the base rates stand, read off between the points. */
export interface RoughnessFactor extends ForGroups {
  readonly points: readonly { readonly iri: number; readonly factor: number }[];
  /** Roughness that each surface's base rate already stands for, m/km. */
  readonly surfaceIri: Readonly<Record<Surface, number>>;
}

/** (km / referenceKm) ^ exponent, kept between `least` and `most`. */
export interface DistanceFactor extends ForGroups {
  readonly exponent: number;
  readonly referenceKm: number;
  readonly least: number;
  readonly most: number;
}

/** 1 + perYear x (age - referenceYears), kept between `least` and `most`. */
export interface AgeFactor extends ForGroups {
  readonly perYear: number;
  readonly referenceYears: number;
  readonly least: number;
  readonly most: number;
}

/** The last step whose `fromYears` has been reached. */
export interface YearSteps extends ForGroups {
  readonly steps: readonly { readonly fromYears: number; readonly factor: number }[];
}

/** A factor chosen by a word of the garage file. */
export interface WordFactor<Word extends string> extends ForGroups {
  readonly factor: Readonly<Record<Word, number>>;
}

export interface FlatFactor extends ForGroups {
  readonly factor: number;
}

/** Past the threshold (above it for heat and altitude, below it for cold). Several that are passed multiply. */
export interface ThresholdFactor extends ForGroups {
  /** Degrees Celsius, or metres of altitude. */
  readonly threshold: number;
  readonly factor: number;
  /** In place of `factor` where the tyres run soft. */
  readonly softTyres?: number;
}

/** (mass / rated) ^ exponent. */
export interface LoadFactor extends ForGroups {
  readonly exponent: number;
  /** The heavier loaded axle, or the gross mass. */
  readonly of: 'axle' | 'gross';
}

/** What a modification brings. `surface` absent: everywhere. */
export interface ModificationFactor extends ForGroups {
  readonly id: string;
  readonly title: string;
  readonly when?: Condition;
  readonly liftMoreThanMm?: number;
  readonly oversizeMoreThanPct?: number;
  readonly roofOverloaded?: true;
  readonly surface?: Surface;
  readonly factor: number;
}

/**
 * What is left of a factor on one sort of part when it is spread over the part's whole group.
 * `shareOfGroup` is the part's share of the group's failures, 0..1.
 */
export function spread(onPart: number, shareOfGroup: number): number {
  return 1 + shareOfGroup * (onPart - 1);
}
