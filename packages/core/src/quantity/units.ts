import type { Quantity } from './brand.ts';

/**
 * SI inside, with two stated exceptions: what is chosen by whole pieces is counted in whole grams, millilitres and
 * cents, because sums of integers are exact and proofs need exact sums (docs/design/quantities.md).
 */
export type Grams = Quantity<'g'>;
export type Millilitres = Quantity<'ml'>;
export type Cents = Quantity<'cent'>;
/** Whole millimetres, for what is added up side by side; lengths that are computed with are metres. */
export type Millimetres = Quantity<'mm'>;
export type Kilograms = Quantity<'kg'>;
export type Metres = Quantity<'m'>;
export type NewtonMetres = Quantity<'N m'>;
export type Newtons = Quantity<'N'>;
export type Kelvins = Quantity<'K'>;
export type Amperes = Quantity<'A'>;
export type Volts = Quantity<'V'>;
export type SquareMetres = Quantity<'m2'>;
export type OhmsPerMetre = Quantity<'ohm/m'>;

// The only casts from bare numbers: everything else receives a quantity.
const whole = (n: number, unit: string): number => {
  if (!Number.isSafeInteger(n)) throw new Error(`${n} is not a whole number of ${unit}`);
  return n;
};
const finite = (n: number, unit: string): number => {
  if (!Number.isFinite(n)) throw new Error(`${n} is not a finite number of ${unit}`);
  return n;
};
export const grams = (n: number): Grams => whole(n, 'grams') as Grams;
export const millilitres = (n: number): Millilitres => whole(n, 'millilitres') as Millilitres;
export const wholeMillimetres = (n: number): Millimetres => whole(n, 'millimetres') as Millimetres;
export const cents = (n: number): Cents => whole(n, 'cents') as Cents;
export const kilograms = (n: number): Kilograms => finite(n, 'kilograms') as Kilograms;
export const metres = (n: number): Metres => finite(n, 'metres') as Metres;
export const newtonMetres = (n: number): NewtonMetres => finite(n, 'newton metres') as NewtonMetres;
export const newtons = (n: number): Newtons => finite(n, 'newtons') as Newtons;
export const kelvins = (n: number): Kelvins => finite(n, 'kelvins') as Kelvins;
export const amperes = (n: number): Amperes => finite(n, 'amperes') as Amperes;
export const volts = (n: number): Volts => finite(n, 'volts') as Volts;
export const squareMetres = (n: number): SquareMetres => finite(n, 'square metres') as SquareMetres;
export const ohmsPerMetre = (n: number): OhmsPerMetre => finite(n, 'ohms per metre') as OhmsPerMetre;

/** Exact by definition (international yard and pound, 1959). */
export const MM_PER_INCH = 25.4;
export const GRAMS_PER_POUND = 453.59237;
/** Standard gravity, m/s^2 (CGPM 1901), exact by definition. */
export const STANDARD_GRAVITY = 9.80665;
/** 1 lbf ft in N m: 0.45359237 * 9.80665 * 0.3048, exact. */
export const NM_PER_POUND_FOOT = 0.45359237 * STANDARD_GRAVITY * 0.3048;

export const millimetres = (n: number): Metres => metres(n / 1000);
export const inches = (n: number): Metres => metres((n * MM_PER_INCH) / 1000);
export const inMillimetres = (m: Metres): number => m * 1000;
