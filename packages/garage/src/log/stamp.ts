/**
 * Hybrid logical clock (Kulkarni and others, "Logical Physical Clocks", 2014): the greatest time seen, a counter within it,
 * and besides, for the eye only, what the device's own clock said. Fixed widths in base 36, so that text sorts as time
 * does. A stamp is later than every stamp its device had seen, however wrong the clocks are; nothing but the order of
 * the history and the value shown meanwhile in a conflict hangs on it.
 */
const TIME_DIGITS = 9;
const COUNTER_DIGITS = 4;
const COUNTER_END = 36 ** COUNTER_DIGITS;

export const STAMP = /^[0-9a-z]{9}-[0-9a-z]{4}-[0-9a-z]{9}$/;

/** The stamp after `last` (the greatest seen, null if none) when the clock says `now`, in milliseconds since 1970. */
export function nextStamp(last: string | null, now: number): string {
  const own = Math.max(0, Math.floor(now));
  const seen = last === null ? -1 : parseInt(last.slice(0, TIME_DIGITS), 36);
  if (last === null || own > seen) return stamp(own, 0, own);
  const counter = parseInt(last.slice(TIME_DIGITS + 1, TIME_DIGITS + 1 + COUNTER_DIGITS), 36) + 1;
  return counter < COUNTER_END ? stamp(seen, counter, own) : stamp(seen + 1, 0, own);
}

/** What the device's own clock said, in milliseconds since 1970. */
export function clockOf(time: string): number {
  return parseInt(time.slice(-TIME_DIGITS), 36);
}

function stamp(time: number, counter: number, own: number): string {
  return [digits(time, TIME_DIGITS), digits(counter, COUNTER_DIGITS), digits(own, TIME_DIGITS)].join('-');
}

function digits(value: number, width: number): string {
  return value.toString(36).padStart(width, '0');
}
