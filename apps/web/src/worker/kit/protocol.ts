import type { Garage } from '@waymend/garage/record/schema';
import type { Question } from '@waymend/planner/plan/plan-trip';
import type { SizeRow } from '@waymend/planner/views/size-table';

/** What the kit screens ask of the worker beyond the plan, its curve and the why. */
export type KitRequest =
  /** The sizes of the vehicle and what the kit undoes them with. */
  | {
      readonly kind: 'kit/sizes';
      readonly garage: Garage;
      readonly trip: string;
      readonly question: Question;
    }
  /** What the planner would buy, by its ids ('buy:CW-14', 'set:...'). */
  | { readonly kind: 'kit/shop'; readonly items: readonly string[] }
  /** What renewing a part before leaving does to the rate of a failure. */
  | { readonly kind: 'kit/renewal'; readonly failure: string };

/** One thing of the catalogue at its guide price. */
export interface ShopItem {
  readonly item: string;
  /** Catalogue id. */
  readonly is: string;
  readonly name: string;
  readonly grams: number;
  readonly cents: number;
}

export type KitReply =
  | { readonly kind: 'kit/sizes'; readonly rows: readonly SizeRow[] }
  | { readonly kind: 'kit/shop'; readonly items: readonly ShopItem[] }
  | { readonly kind: 'kit/renewal'; readonly what: string; readonly rateFactor: number };
