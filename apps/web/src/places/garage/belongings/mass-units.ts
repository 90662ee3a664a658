import { GRAMS_PER_POUND } from '@waymend/core/quantity/units';

const GRAMS_PER_OUNCE = GRAMS_PER_POUND / 16;

/** What a scale in the hand shows: whole grams, or ounces to a tenth. */
export type ScaleUnit = 'g' | 'oz';

/** Whole grams of a reading. */
export function gramsOf(reading: number, unit: ScaleUnit): number {
  return Math.round(unit === 'g' ? reading : reading * GRAMS_PER_OUNCE);
}
