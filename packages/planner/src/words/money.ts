import { grouped } from './chance.ts';

/** Whole cents as money, without false pennies above ten: EUR 8.50, EUR 35, EUR 1,200. */
export function moneyText(cents: number, currency: string): string {
  const whole = cents / 100;
  return `${currency} ${whole < 10 && cents % 100 !== 0 ? whole.toFixed(2) : grouped(Math.round(whole))}`;
}
