import type { Grams, Metres, Millilitres, NewtonMetres } from '@waymend/core/quantity/units';
import {
  GRAMS_PER_POUND,
  grams,
  metres,
  millilitres,
  MM_PER_INCH,
  newtonMetres,
  NM_PER_POUND_FOOT,
  STANDARD_GRAVITY,
} from '@waymend/core/quantity/units';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { readNumberText } from './number-text.ts';

/** A number with its unit as a person writes it, in SI (pressure in kilopascals: nothing else computes with it). */
export type QuantityRead =
  | { readonly kind: 'mass'; readonly mass: Grams }
  | { readonly kind: 'length'; readonly length: Metres }
  | { readonly kind: 'torque'; readonly torque: NewtonMetres }
  | { readonly kind: 'pressure'; readonly kPa: number }
  | { readonly kind: 'volume'; readonly volume: Millilitres };

type Kind = QuantityRead['kind'];

/** Factors to g, mm, N m, kPa and ml. Pound, inch and gravity are exact by definition; psi follows from them. */
const PSI_IN_KPA = (GRAMS_PER_POUND * STANDARD_GRAVITY) / MM_PER_INCH ** 2;
const UNITS: readonly { readonly kind: Kind; readonly factor: number; readonly said: readonly string[] }[] = [
  { kind: 'mass', factor: 1, said: ['g', 'gr', 'gm', 'gms', 'gram', 'grams', 'gramm'] },
  { kind: 'mass', factor: 1000, said: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'] },
  { kind: 'mass', factor: GRAMS_PER_POUND / 16, said: ['oz', 'ounce', 'ounces'] },
  { kind: 'mass', factor: GRAMS_PER_POUND, said: ['lb', 'lbs', 'pound', 'pounds'] },
  { kind: 'mass', factor: 1e6, said: ['t', 'tonne', 'tonnes'] },
  { kind: 'length', factor: 1, said: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'] },
  { kind: 'length', factor: 10, said: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'] },
  { kind: 'length', factor: 1000, said: ['m', 'metre', 'metres', 'meter', 'meters'] },
  { kind: 'length', factor: 1e6, said: ['km', 'kilometre', 'kilometres', 'kilometer', 'kilometers'] },
  { kind: 'length', factor: MM_PER_INCH, said: ['in', 'inch', 'inches', '"', "''"] },
  { kind: 'length', factor: 12 * MM_PER_INCH, said: ['ft', 'foot', 'feet', "'"] },
  { kind: 'length', factor: 63360 * MM_PER_INCH, said: ['mi', 'mile', 'miles'] },
  {
    kind: 'torque',
    factor: 1,
    said: ['nm', 'newton metre', 'newton metres', 'newton meter', 'newton meters'],
  },
  {
    kind: 'torque',
    factor: NM_PER_POUND_FOOT,
    said: ['ft lb', 'ft lbs', 'ft lbf', 'lb ft', 'lbs ft', 'lbf ft', 'ftlb', 'ftlbs', 'lbft', 'foot pounds'],
  },
  { kind: 'torque', factor: NM_PER_POUND_FOOT / 12, said: ['in lb', 'in lbs', 'lb in', 'inlb', 'lbf in'] },
  { kind: 'torque', factor: STANDARD_GRAVITY, said: ['kgm', 'kgf m', 'kgfm', 'mkg'] },
  { kind: 'pressure', factor: PSI_IN_KPA, said: ['psi'] },
  { kind: 'pressure', factor: 100, said: ['bar'] },
  { kind: 'pressure', factor: 1, said: ['kpa'] },
  { kind: 'volume', factor: 1, said: ['ml', 'cc'] },
  { kind: 'volume', factor: 10, said: ['cl'] },
  { kind: 'volume', factor: 100, said: ['dl'] },
  { kind: 'volume', factor: 1000, said: ['l', 'lt', 'ltr', 'litre', 'litres', 'liter', 'liters'] },
];

const UNIT_BY_WORD = new Map(
  UNITS.flatMap(({ kind, factor, said }) => said.map((word) => [word, { kind, factor }] as const)),
);

/** Different in two countries: guessing would be wrong by a fifth. */
const DOUBTFUL = new Set([
  'gal',
  'gallon',
  'gallons',
  'qt',
  'quart',
  'quarts',
  'pt',
  'pint',
  'pints',
  'fl oz',
  'st',
  'ton',
  'tons',
]);

/** Longest text that can be a quantity; anything longer is not worth reading. */
const LONGEST = 60;

/** A unit's kind and its factor to g, mm, N m, kPa or ml; null when it is not one we know. */
export function unitOf(word: string): { readonly kind: Kind; readonly factor: number } | null {
  return UNIT_BY_WORD.get(plainUnit(word)) ?? null;
}

function plainUnit(word: string): string {
  return word
    .toLowerCase()
    .replace(/[·.*-]/g, ' ')
    .replace(/[″”“]/g, '"')
    .replace(/[′’‘]/g, "'")
    .replace(/\bn\s+m\b/, 'nm')
    .replace(/\s+/g, ' ')
    .trim();
}

/** '1.2 kg' -> ['1.2', 'kg']; null when it does not start with a number. */
function split(text: string): { readonly number: string; readonly unit: string } | null {
  const match =
    /^([+-]?\s*(?:\d+(?:[ -]\d+)?\s*\/\s*\d+|\d+\s*[¼½¾⅛⅜⅝⅞]|[¼½¾⅛⅜⅝⅞]|\d[\d.,' \u00a0]*|[.,]\d+))(.*)$/su.exec(
      text,
    );
  if (match === null) return null;
  const [, number = '', unit = ''] = match;
  // An apostrophe at the end of the number is the foot mark, not a thousands mark.
  const tail = /['\s.,\u00a0]+$/.exec(number)?.[0] ?? '';
  return {
    number: number.slice(0, number.length - tail.length),
    unit: `${tail.replace(/[.,]/g, '')}${unit}`.trim(),
  };
}

function read(
  text: string,
): Result<{ readonly kind: Kind; readonly value: number } | { readonly kind: null; readonly value: number }> {
  const trimmed = text.trim();
  const parts = trimmed.length > LONGEST ? null : split(trimmed);
  if (parts === null)
    return refuse(
      'quantity-unreadable',
      `"${shown(text)}" is not a number with a unit; write it like 1.2 kg, 300 mm or 130 Nm`,
    );
  const number = readNumberText(parts.number);
  if (!number.ok) return number;
  if (parts.unit === '') return ok({ kind: null, value: number.value });
  const unit = unitOf(parts.unit);
  if (unit !== null) return ok({ kind: unit.kind, value: number.value * unit.factor });
  const word = shown(parts.unit);
  return DOUBTFUL.has(plainUnit(parts.unit))
    ? refuse('unit-doubtful', `"${word}" differs between countries; write litres or kilograms instead`)
    : refuse(
        'unit-unknown',
        `"${word}" is not a unit that is known here; use g, kg, oz, lb, mm, cm, m, in, ft, Nm, ft-lb, bar, psi, ml or l`,
      );
}

/**
 * Reads '1.2 kg', '1,5 kg', '12 oz', '300 mm', '12"', '1/2 in', '130 Nm', '95 ft-lb', '65 psi', '0.5 l'. Refuses numbers
 * without a unit, units it does not know, units that differ between countries, and 1,200 (1.2 or 1200?).
 */
export function readQuantity(text: string): Result<QuantityRead> {
  const found = read(text);
  if (!found.ok) return found;
  const { kind, value } = found.value;
  if (!Number.isSafeInteger(Math.round(value)))
    return refuse('number-too-large', `"${shown(text)}" is too large to be meant`);
  switch (kind) {
    case null:
      return refuse('unit-missing', `"${shown(text)}" has no unit; write it like 1.2 kg, 300 mm or 130 Nm`);
    case 'mass':
      return ok({ kind, mass: grams(Math.round(value)) });
    case 'length':
      return ok({ kind, length: metres(value / 1000) });
    case 'torque':
      return ok({ kind, torque: newtonMetres(value) });
    case 'pressure':
      return ok({ kind, kPa: value });
    case 'volume':
      return ok({ kind, volume: millilitres(Math.round(value)) });
  }
}

/** Units that keys of the record are named in, with the factor from g, mm, N m or ml. */
const KEY_UNITS = {
  g: { kind: 'mass', per: 1, say: '180 g' },
  kg: { kind: 'mass', per: 1000, say: '37 kg' },
  mm: { kind: 'length', per: 1, say: '300 mm' },
  km: { kind: 'length', per: 1e6, say: '410 km' },
  Nm: { kind: 'torque', per: 1, say: '130 Nm' },
  ml: { kind: 'volume', per: 1, say: '500 ml' },
  l: { kind: 'volume', per: 1000, say: '2 l' },
} as const satisfies Record<string, { kind: Kind; per: number; say: string }>;

export type KeyUnit = keyof typeof KEY_UNITS;

/** The number a key holds, in the key's unit, from text with or without a unit. Refuses a unit of another kind. */
export function amountIn(unit: KeyUnit, text: string): Result<number> {
  const { kind, per, say } = KEY_UNITS[unit];
  const found = read(text);
  if (!found.ok) return found;
  if (found.value.kind === null) return ok(found.value.value);
  if (found.value.kind !== kind) {
    return refuse(
      'unit-wrong',
      `"${shown(text)}" is a ${found.value.kind} where a ${kind} belongs; write it like ${say}`,
    );
  }
  // Nine digits say all that a scale does; the rest would be noise of the factor.
  return ok(Number((found.value.value / per).toPrecision(9)));
}

function shown(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}...` : text;
}
