import type { Row } from './rows.ts';

/** What a garage weighs, as its list says it. Grams; for sale is not owned and not counted. */
export interface Totals {
  /** Belongings and their copies; a boxed set counts as what is in it. */
  readonly things: number;
  readonly grams: number;
  readonly estimated: number;
  readonly forSale: number;
  /** Kinds of things whose mass nobody has said or knows. */
  readonly noMass: number;
}

export function totalsOf(rows: readonly Row[]): Totals {
  let things = 0;
  let grams = 0;
  let estimated = 0;
  let forSale = 0;
  let noMass = 0;
  for (const row of rows) {
    const { belonging, each, contents } = row;
    // The pieces of a set count by themselves; the set adds its case.
    const own = contents === null ? row.total : (belonging.set?.caseGrams ?? 0);
    if (belonging.forSale) {
      forSale += 1;
      continue;
    }
    grams += own;
    if (contents !== null) continue;
    things += belonging.copies;
    if (each === null) noMass += 1;
    if (row.estimated) estimated += own;
  }
  return { things, grams, estimated, forSale, noMass };
}
