/** What something that holds charge loses by itself; the catalogue's record fits it without being named. */
export interface SelfDischargeFacts {
  /** Share of the charge left that is lost in a month near 20 degrees C, from and to. */
  readonly perMonth: readonly [number, number];
  /** Degrees C that double it. */
  readonly doublesEveryC: number;
}

/** State of charge, percent: likely, and from and to. */
export interface Charge {
  readonly pct: number;
  readonly low: number;
  readonly high: number;
}

const DAYS_PER_MONTH = 365.25 / 12;
/** Where the tables of self-discharge stand. */
const REFERENCE_C = 20;

/**
 * Charge left after so many days at a steady temperature: each month takes the same share of what is left, and so many degrees
 * warmer take it twice as fast. No charge is gained, and none is lost while no day passes.
 */
export function chargeAfter(
  startPct: number,
  days: number,
  celsius: number,
  facts: SelfDischargeFacts,
): Charge {
  const speed = 2 ** ((celsius - REFERENCE_C) / facts.doublesEveryC);
  const months = (Math.max(0, days) / DAYS_PER_MONTH) * speed;
  const left = (perMonth: number) => startPct * (1 - perMonth) ** months;
  const [least, most] = facts.perMonth;
  return { pct: left((least + most) / 2), low: left(most), high: left(least) };
}
