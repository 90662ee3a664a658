import { IDS_BY_TEXT } from '@waymend/catalogue/aliases';
import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';

/** A boxed set, as far as the importer needs to know it. */
export interface KnownSet {
  readonly id: string;
  readonly title: string;
  readonly caseGrams: number;
  readonly contents: readonly { readonly is: string; readonly copies: number }[];
}

/** What typed lists are matched against. */
export interface ImportCatalogue {
  readonly belongings: readonly CatalogueBelonging[];
  /** What people call things, in plain words, and the ids it may mean, the usual one first. */
  readonly idsByText: ReadonlyMap<string, readonly string[]>;
  readonly sets: readonly KnownSet[];
}

/** The catalogue that ships. */
export const SHIPPED_CATALOGUE: ImportCatalogue = {
  belongings: BELONGINGS,
  idsByText: IDS_BY_TEXT,
  sets: BOXED_SETS,
};
