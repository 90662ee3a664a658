import { GRAMS_PER_POUND, MM_PER_INCH, NM_PER_POUND_FOOT } from '@waymend/core/quantity/units';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { readNumberText } from '@waymend/garage/record/number-text';
import type { KeyUnit } from '@waymend/garage/record/quantity-text';
import { amountIn } from '@waymend/garage/record/quantity-text';

/** 5,280 feet of 12 inches. */
export const KM_PER_MILE = (5280 * 12 * MM_PER_INCH) / 1e6;
const M_PER_FOOT = (12 * MM_PER_INCH) / 1000;
const LITRES_PER_CUBIC_FOOT = (12 * MM_PER_INCH) ** 3 / 1e6;

/**
 * Quantities that people type. `load`: kilograms of an axle or a load, shown whole; `mass`: kilograms of a kit or a wheel;
 * `piece`: grams of one thing; `length`: millimetres; `height`: metres above the sea; `room`: litres.
 */
export type Typed =
  | 'distance'
  | 'load'
  | 'mass'
  | 'piece'
  | 'length'
  | 'height'
  | 'room'
  | 'torque'
  | 'temperature';

export interface FieldUnit {
  /** Key of the unit's name among the words. */
  readonly name: `units.${UnitName}`;
  /** What the field shows for a recorded value; null for none. */
  readonly show: (recorded: number | null) => number | null;
  /** What is recorded for a number that was typed. */
  readonly read: (typed: number | null) => number | null;
  /** What is recorded for a text that was typed: a number in the field's unit, or one with a unit of its own; null for none. */
  readonly readText: (text: string) => Result<number | null>;
}

type UnitName =
  | 'km'
  | 'miles'
  | 'kg'
  | 'lb'
  | 'grams'
  | 'ounces'
  | 'millimetres'
  | 'inches'
  | 'metres'
  | 'feet'
  | 'litres'
  | 'cubicFeet'
  | 'newtonMetres'
  | 'poundFeet'
  | 'celsius'
  | 'fahrenheit';

interface Scale {
  readonly metric: UnitName;
  readonly inch: UnitName;
  /** Recorded units in one of the inch side. */
  readonly per: number;
  /** Figures after the point that the inch side shows. */
  readonly digits: number;
  /** The unit a quantity with a unit of its own is read in, and how many of them a recorded one is. */
  readonly key: KeyUnit;
  readonly keyPer: number;
}

const SCALES: Readonly<Record<Exclude<Typed, 'temperature'>, Scale>> = {
  distance: { metric: 'km', inch: 'miles', per: KM_PER_MILE, digits: 0, key: 'km', keyPer: 1 },
  load: { metric: 'kg', inch: 'lb', per: GRAMS_PER_POUND / 1000, digits: 0, key: 'kg', keyPer: 1 },
  mass: { metric: 'kg', inch: 'lb', per: GRAMS_PER_POUND / 1000, digits: 1, key: 'kg', keyPer: 1 },
  piece: { metric: 'grams', inch: 'ounces', per: GRAMS_PER_POUND / 16, digits: 1, key: 'g', keyPer: 1 },
  length: { metric: 'millimetres', inch: 'inches', per: MM_PER_INCH, digits: 2, key: 'mm', keyPer: 1 },
  height: { metric: 'metres', inch: 'feet', per: M_PER_FOOT, digits: 0, key: 'mm', keyPer: 1000 },
  room: { metric: 'litres', inch: 'cubicFeet', per: LITRES_PER_CUBIC_FOOT, digits: 1, key: 'l', keyPer: 1 },
  torque: {
    metric: 'newtonMetres',
    inch: 'poundFeet',
    per: NM_PER_POUND_FOOT,
    digits: 0,
    key: 'Nm',
    keyPer: 1,
  },
};

/** Numbers as this owner types them; what is recorded stays metric, to a thousandth. */
export function fieldUnit(of: Typed, units: 'metric' | 'inch'): FieldUnit {
  if (of === 'temperature') return units === 'metric' ? CELSIUS : FAHRENHEIT;
  const scale = SCALES[of];
  const inch = units === 'inch';
  const read = (typed: number | null) =>
    typed === null ? null : inch ? rounded(typed * scale.per, 3) : typed;
  return {
    name: `units.${inch ? scale.inch : scale.metric}`,
    show: (value) =>
      value === null ? null : inch ? rounded(value / scale.per, scale.digits) : rounded(value, 3),
    read,
    readText: (text) => readText(text, read, (own) => withOwnUnit(own, of, scale)),
  };
}

const CELSIUS: FieldUnit = {
  name: 'units.celsius',
  show: (c) => c,
  read: (c) => c,
  readText: (text) => readText(text, (c) => c, degrees),
};

const fromFahrenheit = (f: number | null) => (f === null ? null : rounded((f - 32) / 1.8, 3));

const FAHRENHEIT: FieldUnit = {
  name: 'units.fahrenheit',
  show: (c) => (c === null ? null : Math.round(c * 1.8 + 32)),
  read: fromFahrenheit,
  readText: (text) => readText(text, fromFahrenheit, degrees),
};

function readText(
  text: string,
  plain: (typed: number) => number | null,
  own: (text: string) => Result<number>,
): Result<number | null> {
  const trimmed = text.trim();
  if (trimmed === '') return ok(null);
  const number = readNumberText(trimmed);
  if (number.ok) return ok(plain(number.value));
  return number.error.id === 'number-ambiguous' ? number : own(trimmed);
}

function withOwnUnit(text: string, of: Typed, scale: Scale): Result<number> {
  // Cubic feet are in no list of units that belongings are written in.
  const feet = of === 'room' ? /^(.*?)\s*(?:ft³|ft\^?3|cu\.?\s?ft\.?|cubic f(?:oo|ee)t)$/i.exec(text) : null;
  if (feet !== null) {
    const count = readNumberText(feet[1] ?? '');
    return count.ok ? ok(rounded(count.value * LITRES_PER_CUBIC_FOOT, 3)) : count;
  }
  const amount = amountIn(scale.key, text);
  return amount.ok ? ok(rounded(amount.value / scale.keyPer, 3)) : amount;
}

/** '35 °C', '95 F', '-5c'. */
function degrees(text: string): Result<number> {
  const match = /^(.*?)\s*(?:°|deg\.?|degrees)?\s*([cf])$/i.exec(text.replace('\u2212', '-'));
  if (match === null)
    return refuse(
      'temperature-unreadable',
      `"${text.slice(0, 60)}" is not a temperature; write it like 35 °C`,
    );
  const [, count = '', letter = 'c'] = match;
  const number = readNumberText(count);
  if (!number.ok) return number;
  return ok(letter.toLowerCase() === 'c' ? number.value : (fromFahrenheit(number.value) ?? 0));
}

function rounded(value: number, digits: number): number {
  const scale = 10 ** digits;
  return Math.round(value * scale) / scale;
}
