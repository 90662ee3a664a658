/**
 * The closed set of units a standard's table may print, what each measures, and its exact factor to SI. Only this file
 * converts: a value is typed as its source prints it and never by hand in another unit.
 */
const UNITS = {
  mm: { measures: 'length', si: 1e-3 },
  m: { measures: 'length', si: 1 },
  km: { measures: 'length', si: 1e3 },
  in: { measures: 'length', si: 0.0254 },
  mile: { measures: 'length', si: 1609.344 },
  mm2: { measures: 'area', si: 1e-6 },
  in2: { measures: 'area', si: 0.0254 ** 2 },
  g: { measures: 'mass', si: 1e-3 },
  kg: { measures: 'mass', si: 1 },
  lb: { measures: 'mass', si: 0.45359237 },
  N: { measures: 'force', si: 1 },
  lbf: { measures: 'force', si: 0.45359237 * 9.80665 },
  'N m': { measures: 'torque', si: 1 },
  'lbf ft': { measures: 'torque', si: 0.45359237 * 9.80665 * 0.3048 },
  'lbf in': { measures: 'torque', si: 0.45359237 * 9.80665 * 0.0254 },
  MPa: { measures: 'stress', si: 1e6 },
  psi: { measures: 'stress', si: (0.45359237 * 9.80665) / 0.0254 ** 2 },
  A: { measures: 'current', si: 1 },
  V: { measures: 'voltage', si: 1 },
  'ohm/km': { measures: 'resistance per length', si: 1e-3 },
  'km/h': { measures: 'speed', si: 1 / 3.6 },
  s: { measures: 'time', si: 1 },
  min: { measures: 'time', si: 60 },
  h: { measures: 'time', si: 3600 },
  // Months and years as twelfths and multiples of the mean Gregorian year, 365.2425 days.
  month: { measures: 'time', si: (365.2425 * 86400) / 12 },
  year: { measures: 'time', si: 365.2425 * 86400 },
  degC: { measures: 'temperature', si: 1 },
  deg: { measures: 'angle', si: Math.PI / 180 },
  '%': { measures: 'share', si: 0.01 },
  ratio: { measures: 'share', si: 1 },
  'per inch': { measures: 'number per length', si: 1 / 0.0254 },
  count: { measures: 'number', si: 1 },
  text: { measures: 'words', si: Number.NaN },
} as const satisfies Record<string, { measures: string; si: number }>;

/** Exact by definition (international yard, 1959). */
export const MM_PER_IN = 25.4;

export type Unit = keyof typeof UNITS;

export const UNIT_NAMES: readonly string[] = Object.keys(UNITS);

/** Degrees Celsius shift as well as scale, so they have their own line. */
const KELVIN_AT_0_C = 273.15;

/** `value` printed in `unit`, in the SI unit of what the unit measures (a share as a plain ratio). */
export function toSi(value: number, unit: Unit): number {
  if (unit === 'text') throw new Error('words have no SI value');
  return unit === 'degC' ? value + KELVIN_AT_0_C : value * UNITS[unit].si;
}

/** What a unit measures: two columns may be compared only when this is the same. */
export function measures(unit: Unit): string {
  return UNITS[unit].measures;
}

const FRACTION = /^(?:(\d+)-)?(\d+)\/(\d+)$/;

/** A printed number: plain, or an inch fraction as stamped on a tool ('11/16', '1-1/2', '2'). Null when it is neither. */
export function readNumber(printed: number | string): number | null {
  if (typeof printed === 'number') return Number.isFinite(printed) ? printed : null;
  if (/^\d+(\.\d+)?$/.test(printed)) return Number(printed);
  const match = FRACTION.exec(printed);
  if (match === null) return null;
  const [, whole = '0', over, under] = match;
  const below = Number(under);
  return below === 0 ? null : Number(whole) + Number(over) / below;
}
