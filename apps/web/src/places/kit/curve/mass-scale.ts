/** What the axis of kilograms has to show, in grams. */
export interface MassRange {
  readonly floor: number;
  readonly heaviest: number;
  /** Kit at which the vehicle is full; null when nothing limits it. */
  readonly full: number | null;
  readonly everything: number;
}

export interface MassScale {
  readonly x: (grams: number) => number;
  readonly grams: (x: number) => number;
  readonly ticks: readonly { readonly grams: number; readonly x: number; readonly words: boolean }[];
  /** Where the scale is broken: what lies before (after) is squeezed into a few pixels, and drawn so. */
  readonly breakBefore: number | null;
  readonly breakAfter: number | null;
  readonly end: number;
}

/** Pixels that a squeezed stretch takes. */
const SQUEEZED = 30;
/** The squeezed end has room for its dimension on a desk. */
const SQUEEZED_END = { wide: 100, narrow: 34 };
/** The empty start of the axis is squeezed when it takes more than this share of it; so is the end past every point. */
const EMPTY_SHARE = 0.25;

/**
 * A true scale of mass with at most two breaks: before the safety floor, where no kit lies, and behind the heaviest point,
 * where only the rest of what is owned lies.
 *
 * @param unit Grams of one printed unit: 1000, or those of a pound.
 */
export function massScale(range: MassRange, left: number, right: number, unit: number): MassScale {
  const { floor, heaviest, everything } = range;
  const full = range.full !== null && range.full < everything ? range.full : 0;
  const used = Math.max(heaviest, full, floor, unit);
  const cutEnd = everything > used * (1 + EMPTY_SHARE);
  const top = cutEnd ? used + 0.06 * (used - floor * 0.9) : Math.max(everything, used);
  const cutStart = floor > EMPTY_SHARE * top;
  const from = cutStart ? Math.max(0, floor - 0.07 * (top - floor)) : 0;
  const x0 = left + (cutStart ? SQUEEZED : 0);
  const squeezedEnd = right - left > 480 ? SQUEEZED_END.wide : SQUEEZED_END.narrow;
  const x1 = right - (cutEnd ? squeezedEnd : 0);
  const perGram = (x1 - x0) / Math.max(1, top - from);
  const x = (g: number): number => {
    if (g < from) return left + (g / Math.max(1, from)) * SQUEEZED;
    if (g > top) return x1 + Math.min(1, (g - top) / Math.max(1, everything - top)) * squeezedEnd;
    return x0 + (g - from) * perGram;
  };
  const step = niceStep((top - from) / unit / Math.max(2, (x1 - x0) / 64));
  const ticks: { grams: number; x: number; words: boolean }[] = [];
  const fine = step / (step >= 5 && String(step).startsWith('2') ? 4 : 5);
  for (let n = Math.ceil(from / unit / fine); n * fine * unit <= top + 1; n++) {
    const grams = n * fine * unit;
    const words = Math.abs(Math.round((n * fine) / step) * step - n * fine) < 1e-9;
    ticks.push({ grams, x: x(grams), words });
  }
  return {
    x,
    grams: (at) => from + (at - x0) / perGram,
    ticks,
    breakBefore: cutStart ? left + SQUEEZED / 2 : null,
    breakAfter: cutEnd ? right - 17 : null,
    end: right,
  };
}

/** 1, 2 or 5 times a power of ten, not below `least`. */
export function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(least, 1e-6)));
  const found = [1, 2, 5, 10].find((m) => m * power >= least) ?? 10;
  return found * power;
}
