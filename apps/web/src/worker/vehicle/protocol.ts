import type { Garage } from '@waymend/garage/record/schema';
import type { CarriedLine } from '@waymend/planner/views/carried';
import type { KitLine } from '@waymend/planner/views/aboard';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import type { LoadMove } from '@waymend/planner/views/load-moves';
import type { LoadView } from '@waymend/planner/views/load-view';
import type { SizeCure } from '@waymend/planner/views/size-cures';
import type { SizeRail } from '@waymend/planner/views/size-rail';
import type { Walk } from '@waymend/planner/views/walk-order';
import type { WeighedEmpty } from '@waymend/planner/views/weigh-in';

/** A kit's lines as the vehicle screens need them: those of the newest answer. */
export type KitLines = readonly (KitLine & CarriedLine)[];

/** What the vehicle screens ask of the worker, and what it replies; each kind starts with 'vehicle/'. */
export type VehicleRequest =
  | {
      readonly kind: 'vehicle/load';
      readonly garage: Garage;
      readonly trip: string;
      readonly kit: KitLines;
    }
  | {
      readonly kind: 'vehicle/weigh-in';
      readonly garage: Garage;
      readonly trip: string;
      readonly kit: KitLines;
      readonly frontKg: number;
      readonly rearKg: number;
      /** Ids of what was aboard. */
      readonly aboard: readonly string[];
    }
  | {
      readonly kind: 'vehicle/rail';
      readonly garage: Garage;
      readonly trip: string;
      readonly kit: KitLines;
    }
  | {
      readonly kind: 'vehicle/cures';
      readonly garage: Garage;
      readonly trip: string;
      readonly kit: KitLines;
      readonly joints: readonly string[];
    }
  | {
      readonly kind: 'vehicle/fittings';
      readonly garage: Garage;
      readonly vehicle: string;
      readonly trip: string | null;
    }
  | { readonly kind: 'vehicle/facts' };

/** What the catalogue knows that the forms of the Vehicle place offer to choose from. */
export interface VehicleFacts {
  /** Markings of heads that need not be asked about. */
  readonly headSizes: readonly string[];
  readonly places: readonly { readonly id: string; readonly title: string }[];
  readonly patterns: readonly {
    readonly id: string;
    readonly title: string;
    readonly kind: 'vehicle' | 'trailer';
  }[];
  readonly failures: readonly { readonly id: string; readonly title: string; readonly group: string }[];
  readonly groups: readonly { readonly id: string; readonly title: string }[];
  /** What one tyre carries, kg, by its load index. */
  readonly tyreKg: Readonly<Record<number, number>>;
}

export type VehicleReply =
  | { readonly kind: 'vehicle/load'; readonly view: LoadView; readonly moves: readonly LoadMove[] }
  | { readonly kind: 'vehicle/weigh-in'; readonly weighed: WeighedEmpty }
  | { readonly kind: 'vehicle/rail'; readonly rail: SizeRail }
  | { readonly kind: 'vehicle/cures'; readonly cures: readonly SizeCure[] }
  | { readonly kind: 'vehicle/fittings'; readonly rows: readonly FittingRow[]; readonly walk: Walk }
  | { readonly kind: 'vehicle/facts'; readonly facts: VehicleFacts };
