import { GRAMS_PER_POUND } from '@waymend/core/quantity/units';
import { grouped } from './chance.ts';

/** How an owner reads numbers. */
export type UnitStyle = 'metric' | 'inch';

/** Grams as a person says them, two or three figures: 45 g, 640 g, 3.9 kg, 38 kg, 2,840 kg. */
export function massText(grams: number, style: UnitStyle = 'metric'): string {
  if (style === 'inch') {
    const pounds = grams / GRAMS_PER_POUND;
    if (Math.abs(pounds) < 1) return `${figures(pounds * 16)} oz`;
    return `${figures(pounds)} lb`;
  }
  if (Math.abs(grams) < 1000) return `${figures(grams)} g`;
  return `${figures(grams / 1000)} kg`;
}

/** Axle and gross masses: whole kilograms or pounds. */
export function loadText(kg: number, style: UnitStyle = 'metric'): string {
  if (style === 'inch') return `${grouped(Math.round((kg * 1000) / GRAMS_PER_POUND))} lb`;
  return `${grouped(Math.round(kg))} kg`;
}

function figures(value: number): string {
  const size = Math.abs(value);
  if (size >= 100) return grouped(Math.round(value));
  if (size >= 10) return String(Math.round(value * 10) / 10);
  return String(Math.round(value * 100) / 100);
}
