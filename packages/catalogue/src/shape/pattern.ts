import type { Basis } from './basis.ts';
import type { PlaceId } from './place-ids.ts';
import type { Access, Drive, Feature } from './words.ts';

/** What a place of a pattern typically takes, where it differs from, or sharpens, the place's own default. */
export interface PatternFitting {
  readonly place: PlaceId;
  /** Absent: the same in every position the place has. */
  readonly position?: string;
  /** Absent: the place's own drive. */
  readonly drive?: Drive;
  /** As marked on the tool: '17 mm', 'T30', 'cross 2'. */
  readonly size: string;
  /** Tightening torque, N m. */
  readonly torqueNm?: number;
  readonly access?: Access;
  /** The other end must be held; an object where it takes another drive or size. */
  readonly counterHold?: boolean | { readonly drive?: Drive; readonly size: string };
  /** Why the size is on none of the tables of standards. */
  readonly offStandard?: string;
}

export interface PatternBerth {
  readonly id: string;
  readonly name: string;
  /** Behind the front axle; negative is ahead of it. For a trailer: behind its coupling. */
  readonly xMm: number;
  readonly limitKg: number;
  readonly roof?: true;
}

/**
 * A kind of vehicle in general, no make: the starting point of a garage until its owner has looked and weighed. Masses
 * are empty, as equipped at the works, full tank. For a trailer the front axle is its coupling: `emptyFrontKg` is the
 * nose mass and `ratedFrontKg` the greatest nose mass.
 */
export interface VehiclePattern {
  readonly id: string;
  readonly title: string;
  readonly kind: 'vehicle' | 'trailer';
  readonly features: readonly Feature[];
  readonly wheelbaseMm: number;
  readonly emptyFrontKg: number;
  readonly emptyRearKg: number;
  readonly ratedFrontKg: number;
  readonly ratedRearKg: number;
  readonly ratedGrossKg: number;
  readonly ratedRoofKg: number;
  /** Load index of one tyre, single fitment. */
  readonly tyre: { readonly loadIndex: number; readonly passenger?: true };
  readonly wheelMassKg: number;
  readonly berths: readonly PatternBerth[];
  readonly fittings: readonly PatternFitting[];
  readonly basis: Basis;
}
