/** An own thing heavier than a wheel and less than a gram is asked about (estimate). */
const HEAVIEST_OWN_GRAMS = 60_000;
const TIMES_OFF = 4;
/** The smallest pieces vary by themselves; this much either way is never worth a question. */
const NEVER_ODD_GRAMS = 100;

/**
 * Whether a mass is so far from what is usual that its owner is asked before it is believed. `usual` is the catalogue's
 * grams for one, or null for an own thing.
 */
export function isOddMass(grams: number, usual: number | null): boolean {
  if (grams < 0) return false;
  if (usual === null) return grams < 1 || grams > HEAVIEST_OWN_GRAMS;
  if (usual === 0) return false;
  return (
    Math.abs(grams - usual) > NEVER_ODD_GRAMS && (grams > usual * TIMES_OFF || grams * TIMES_OFF < usual)
  );
}
