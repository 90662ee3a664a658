import type { ScaleUnit } from '../mass-units.ts';

/** Keys that a keyboard has too. */
export const KEYS = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.'] as const;
export type Key = (typeof KEYS)[number] | 'back';

/** Longest a reading may be: a tonne in grams. */
const MOST_DIGITS = 6;

/** What the display shows after one more key; a key that makes no sense changes nothing. */
export function typed(before: string, key: Key, unit: ScaleUnit): string {
  if (key === 'back') return before.slice(0, -1);
  if (key === '.') return unit === 'g' || before.includes('.') ? before : `${before === '' ? '0' : before}.`;
  const [whole = '', tenths] = before.split('.');
  if (tenths !== undefined) return tenths.length >= 1 ? before : before + key;
  if (whole === '0') return key;
  return whole.length >= MOST_DIGITS ? before : before + key;
}

/** The number on the display; null while it is none or nothing. */
export function readingIn(display: string): number | null {
  const value = Number.parseFloat(display);
  return Number.isNaN(value) || value <= 0 ? null : value;
}
