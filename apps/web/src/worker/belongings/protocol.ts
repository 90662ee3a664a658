import type { ImportMatch, ImportReading } from '@waymend/garage/import/reading';
import type { Belonging, Garage } from '@waymend/garage/record/schema';
import type { CatalogueView } from '@waymend/planner/views/catalogue-view';

type Words = Garage['words'];

/** What the belongings screens ask of the worker, and what it replies; each kind starts with 'belongings/'. */
export type BelongingsRequest =
  | { readonly kind: 'belongings/catalogue' }
  | { readonly kind: 'belongings/find'; readonly text: string; readonly words: Words }
  | { readonly kind: 'belongings/read'; readonly text: string; readonly words: Words }
  | {
      readonly kind: 'belongings/read-file';
      readonly bytes: Uint8Array;
      readonly name: string;
      readonly words: Words;
    }
  /** Belongings made from what was read; nothing is changed here. */
  | { readonly kind: 'belongings/make'; readonly into: Into; readonly matches: readonly ImportMatch[] }
  | {
      readonly kind: 'belongings/teach';
      readonly words: Words;
      readonly word: string;
      readonly means: string;
    }
  /** Whether a size can be read and is made at all. */
  | { readonly kind: 'belongings/size'; readonly text: string }
  | { readonly kind: 'belongings/csv'; readonly garage: Garage };

export interface Suggested {
  readonly kind: 'thing' | 'set';
  readonly id: string;
}

/** What of a garage decides ids, places and what is repeated. */
export type Into = Pick<Garage, 'belongings' | 'bags' | 'berths'>;

export type BelongingsReply =
  | { readonly kind: 'belongings/catalogue'; readonly view: CatalogueView }
  /** Catalogue ids, likeliest first. */
  | { readonly kind: 'belongings/found'; readonly ids: readonly string[] }
  | {
      readonly kind: 'belongings/reading';
      readonly reading: ImportReading;
      /** What the suggestions name: the catalogue's thing or set, by the suggestion's words. */
      readonly suggested: Readonly<Record<string, Suggested>>;
      /** The text of a typed list that came as a file. */
      readonly list: string | null;
    }
  | {
      readonly kind: 'belongings/made';
      readonly added: Readonly<Record<string, Belonging>>;
      /** Places in `matches` of those the garage has from the same line already. */
      readonly repeated: readonly number[];
      /** Sentences about masses that were left out because they are absurd for their kind. */
      readonly unbelieved: readonly string[];
    }
  | { readonly kind: 'belongings/taught'; readonly words: Words }
  /** The size as it is marked; `odd` when it is in no standard, then with the nearest that is. */
  | {
      readonly kind: 'belongings/size';
      readonly label: string;
      readonly odd: boolean;
      readonly nearest: string | null;
    };
