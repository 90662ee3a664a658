import type { Basis } from './shape/basis.ts';
import { estimate } from './shape/basis.ts';
import type { CatalogueBelonging, PriceBand } from './shape/belonging.ts';

export const PRICE_BASIS: Basis = estimate(
  'Middle of a wide band for one decent piece, in euro before any local difference; overwrite with the price in the shop',
);

/** Band ends in whole euro cents; the last band has no upper end. */
export const PRICE_BANDS: Readonly<Record<PriceBand, readonly [number, number | null]>> = {
  P1: [0, 500],
  P2: [500, 1500],
  P3: [1500, 4000],
  P4: [4000, 10000],
  P5: [10000, 30000],
  P6: [30000, null],
};

/** What stands for the open band: half as much again as where it starts. */
const OPEN_BAND_CENTS = 45000;

/** The middle of a band, in whole euro cents. */
export function bandCents(band: PriceBand): number {
  const [low, high] = PRICE_BANDS[band];
  return high === null ? OPEN_BAND_CENTS : Math.round((low + high) / 2);
}

/** Indicative price of one, in whole euro cents. Estimate: see PRICE_BASIS. */
export function priceCents(belonging: Pick<CatalogueBelonging, 'price'>): number {
  return bandCents(belonging.price);
}
