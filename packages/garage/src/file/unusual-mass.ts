import { BELONGING_BY_ID } from '@waymend/catalogue/belongings/all';
import { isOddMass } from '../record/odd-mass.ts';
import type { Belonging } from '../record/schema.ts';

/** Nothing that is carried to a repair weighs more: such a mass is a slip, confirmed or not. */
export const HEAVIEST_GRAMS = 1_000_000;

/**
 * What is odd about the mass of one piece, as the end of a sentence ("weighs 40 kg where about 39 g is usual"), or null when
 * it may be believed. `confirmed` masses are believed.
 */
export function unusualMass({
  is,
  grams,
  confirmed,
}: Pick<Belonging, 'is' | 'grams'> & { readonly confirmed?: boolean }): string | null {
  if (confirmed === true || grams === undefined) return null;
  const usual = is === undefined ? undefined : BELONGING_BY_ID.get(is);
  if (!isOddMass(grams, usual?.grams ?? null)) return null;
  const weighs = `weighs ${massText(grams)}`;
  return usual === undefined ? weighs : `${weighs} where about ${massText(usual.grams)} is usual`;
}

function massText(grams: number): string {
  return grams >= 1000 ? `${Number((grams / 1000).toPrecision(3))} kg` : `${grams} g`;
}
