import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Fraction signs and fraction slashes spelt out: '1½' -> '1-1/2', '1⁄2' -> '1/2'. */
export function spellFractions(text: string): string {
  return text
    .replace(
      /(\d)\s*([½¼¾⅛⅜⅝⅞])/gu,
      (_, digit: string, sign: string) => `${digit}-${FRACTION_SIGNS[sign] ?? ''}`,
    )
    .replace(/[½¼¾⅛⅜⅝⅞]/gu, (sign) => FRACTION_SIGNS[sign] ?? '')
    .replace(/\u2044/g, '/');
}

/**
 * A number as people write it: 12, 1.5, 1,5, 1 200, 1.200,5, 1,200.5, 1/2, 1-1/2. Refuses 1,200, which is 1.2 to one
 * reader and 1200 to another, and anything that is not a finite number.
 */
export function readNumberText(text: string): Result<number> {
  const plain = spellFractions(text.trim());
  const fraction = /^(-?)(?:(\d{1,4})[ -])?(\d{1,4})\s*\/\s*(\d{1,4})$/.exec(plain);
  if (fraction !== null) {
    const [, minus = '', whole = '0', above = '0', below = '1'] = fraction;
    if (Number(below) === 0) return refuse('number-unreadable', `"${text}" divides by nothing`);
    const value = Number(whole) + Number(above) / Number(below);
    return ok(minus === '' ? value : -value);
  }
  const joined = plain.replace(/(?<=\d)[ \u00a0'](?=\d{3}(?!\d))/g, '').replace(/^([+-])\s+/, '$1');
  if (/^[+-]?\d{1,3},\d{3}$/.test(joined)) {
    return refuse('number-ambiguous', `"${text}" can be read in two ways; write it without the comma`);
  }
  const dots = joined.split('.').length - 1;
  const commas = joined.split(',').length - 1;
  const written =
    dots > 0 && commas > 0
      ? joined.lastIndexOf(',') > joined.lastIndexOf('.')
        ? joined.replace(/\./g, '').replace(',', '.')
        : joined.replace(/,/g, '')
      : commas === 1
        ? joined.replace(',', '.')
        : joined;
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(written) || !Number.isFinite(Number(written))) {
    return refuse('number-unreadable', `"${text.slice(0, 60)}" is not a number`);
  }
  return ok(Number(written));
}
