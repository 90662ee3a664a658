import type { Grams, Kilograms, Metres } from '../quantity/units.ts';

/** A spot in or on the vehicle where things ride. */
export interface LoadBerth {
  readonly id: string;
  readonly name: string;
  /** Behind the front axle; negative ahead of it. */
  readonly x: Metres;
  readonly limit?: Kilograms;
  readonly roof: boolean;
}

/** Something that is counted and never chosen: water, fuel, recovery gear, the nose of a trailer. */
export interface FixedLoad {
  readonly id: string;
  readonly name: string;
  readonly mass: Kilograms;
  readonly kind: 'person' | 'cargo' | 'trailer-nose';
  readonly berth?: string;
  /** Behind the front axle; goes before `berth` when both are given. */
  readonly x?: Metres;
}

/** One piece of the kit, or a lump standing for the whole kit. */
export interface KitLoad {
  readonly id: string;
  readonly grams: Grams;
  readonly berth: string | null;
}

/** One row of a tyre load index table. */
export interface LoadIndexRow {
  readonly index: number;
  /** What one tyre carries, kg. */
  readonly kg: number;
}

export interface LoadInput {
  readonly wheelbase: Metres;
  /** As weighed or as the plate says, with whatever is bolted on. */
  readonly emptyFront: Kilograms;
  readonly emptyRear: Kilograms;
  readonly ratedFront: Kilograms;
  readonly ratedRear: Kilograms;
  readonly ratedGross: Kilograms;
  readonly ratedRoof?: Kilograms;
  readonly tyre?: { readonly loadIndex: number; readonly passenger: boolean };
  readonly loadIndexTable: readonly LoadIndexRow[];
  readonly berths: readonly LoadBerth[];
  readonly fixed: readonly FixedLoad[];
  readonly kit: readonly KitLoad[];
  /** Where kit without a berth rides. Absent: over the rear axle (estimate). */
  readonly kitBerth?: string;
}

/**
 * Where things are assumed to ride when the record does not say; each use is named in `LoadResult.assumed`. People sit
 * about the middle of the wheelbase, cargo is over the rear axle, a hitch is about 1.1 m behind it. Estimates: a berth
 * with a measured distance always wins.
 */
export const PERSON_SHARE_OF_WHEELBASE = 0.5;
export const CARGO_SHARE_OF_WHEELBASE = 1;
export const HITCH_BEHIND_REAR_AXLE = 1.1;
