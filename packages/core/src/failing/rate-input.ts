import type { Kelvins, Metres } from '../quantity/units.ts';
import type { Care, CrossingDepth, Driver, RateTables, Stones, Surface } from './rate-tables.ts';

/** What the rates need to know about the vehicle. An absent fact applies no factor. */
export interface VehicleFacts {
  readonly features: ReadonlySet<string>;
  readonly ageYears?: number;
  readonly odometerKm?: number;
  readonly batteryAgeYears?: number;
  readonly care: Care;
  readonly lift: Metres;
  /** How much larger than original the tyres are: 0.1 is ten per cent. */
  readonly tyreOversize: number;
  readonly addedCircuits: number;
  /** Groups whose parts were disturbed in the last 1,000 km. */
  readonly recentWork: readonly string[];
  /** The owner's own known weak points: a failure and how much more often it comes. */
  readonly weakPoints: readonly {
    readonly failure: string;
    readonly factor: number;
    readonly note?: string;
  }[];
  /** By group: the rate that the owner's own log teaches, over the plain one (./learning.ts). Absent: nothing is learned. */
  readonly learned?: readonly { readonly group: string; readonly title: string; readonly factor: number }[];
}

export interface RateLeg {
  readonly id: string;
  readonly distance: Metres;
  readonly surface: Surface;
  /** From the worst point of the leg to a town with parts or a workshop. */
  readonly help: Metres;
  /** Measured or judged roughness, m/km. Absent: the surface class says enough. */
  readonly iri?: number;
  readonly stones: Stones;
  readonly hottest?: Kelvins;
  readonly coldest?: Kelvins;
  readonly altitude?: Metres;
  /** Winter diesel is in the tank. Absent: it is not. */
  readonly winterFuel?: boolean;
  /** Let down for sand, or for comfort, and not pumped up for this leg. */
  readonly softTyres?: boolean;
  readonly dusty: boolean;
  readonly doubtfulFills: number;
  /** Driven at the pace where corrugations shake hardest (about 20-45 km/h), or for hours without cooling stops. */
  readonly resonancePace: boolean;
  readonly crossings: Readonly<Partial<Record<CrossingDepth, number>>>;
}

export interface TripFacts {
  readonly days: number;
  readonly campNights: number;
  readonly driver: Driver;
  /** Mass over rating: axles and gross (M13). */
  readonly load: { readonly front: number; readonly rear: number; readonly gross: number };
  readonly roofOverloaded: boolean;
}

export interface RateInput {
  readonly tables: RateTables;
  readonly vehicle: VehicleFacts;
  readonly legs: readonly RateLeg[];
  readonly trip: TripFacts;
}
