import type { Basis } from './basis.ts';
import type { Offer } from './offer.ts';
import type { Condition } from './words.ts';

export type PriceBand = 'P1' | 'P2' | 'P3' | 'P4' | 'P5' | 'P6';

/** A tool, spare or supply in general: no make, typical mass. Lengths mm, mass g, volume ml, as weighed in a shop. */
export interface CatalogueBelonging {
  /** Stable, never reused. */
  readonly id: string;
  readonly kind: 'tool' | 'spare' | 'supply';
  readonly name: string;
  /** The size as a person would say it, for lists: '17 mm, 3/8 in drive'. */
  readonly size?: string;
  readonly offers: readonly Offer[];
  readonly grams: number;
  readonly lengthMm: number;
  readonly bulkMl: number;
  readonly price: PriceBand;
  /** Basis of mass and lengths. */
  readonly basis: Basis;
  /**
   * Stock this piece holds, when a job uses it up: how many jobs' worth (or litres, for fluids), by stock word.
   * Absent: reusable, or so ample that running out is not modelled (stated in docs/model.md, M5).
   */
  readonly stock?: readonly { readonly of: string; readonly units: number }[];
  /** Ids of care rules that apply. */
  readonly care?: readonly string[];
  /** Dangerous goods and stowing marks. */
  readonly marks?: readonly (
    | 'aerosol'
    | 'fuel'
    | 'lithium'
    | 'liquid'
    | 'sharp'
    | 'hot-hazard'
    | 'battery'
  )[];
  /** When it earns its place, for spares. */
  readonly when?: string;
  /** What the vehicle must have for this to be of any use on it. Absent: any vehicle. */
  readonly fits?: Condition;
}
