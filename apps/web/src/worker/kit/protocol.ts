import type { Garage } from '@waymend/garage/record/schema';
import type { SureAnswer } from '@waymend/planner/answer/sure-answer';
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
  /** How sure the plan is: the best kit for so many beliefs about the rates, and what so many assumed sizes hang on. */
  | {
      readonly kind: 'kit/sure';
      readonly garage: Garage;
      readonly trip: string;
      readonly question: Question;
      readonly draws: number;
      readonly sizes: number;
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
  | { readonly kind: 'kit/sure-step'; readonly done: number; readonly of: number }
  | { readonly kind: 'kit/sure'; readonly answer: SureAnswer }
  | { readonly kind: 'kit/shop'; readonly items: readonly ShopItem[] }
  | { readonly kind: 'kit/renewal'; readonly what: string; readonly rateFactor: number };
