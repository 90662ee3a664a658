/** Days of the calendar as the record writes them, '2026-03-05'. No clock is read and no time zone plays a part. */
export type Day = string;

const MS_PER_DAY = 86_400_000;

/** Days since 1970-01-01. Throws on what is no day: days of a garage have been read already. */
export function dayNumber(day: Day): number {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  const [year = Number.NaN, month = 1, date = 1] = (match?.slice(1) ?? []).map(Number);
  const number = Date.UTC(year, month - 1, date) / MS_PER_DAY;
  if (!Number.isInteger(number)) throw new Error(`"${day}" is not a day`);
  return number;
}

export function dayOf(number: number): Day {
  return new Date(number * MS_PER_DAY).toISOString().slice(0, 10);
}

export function addDays(day: Day, days: number): Day {
  return dayOf(dayNumber(day) + days);
}

/** Whole days from one day to another; negative backwards. */
export function daysBetween(from: Day, to: Day): number {
  return dayNumber(to) - dayNumber(from);
}

/** So many calendar months later; the 31st of a shorter month is its last day. */
export function addMonths(day: Day, months: number): Day {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const last = new Date(Date.UTC(year, month - 1 + months + 1, 0)).getUTCDate();
  return dayOf(Date.UTC(year, month - 1 + months, Math.min(date, last)) / MS_PER_DAY);
}

/** So many years later, in whole months. */
export function addYears(day: Day, years: number): Day {
  return addMonths(day, Math.round(years * 12));
}

/** The earlier of two days. Days sort as text. */
export function earlier(a: Day, b: Day): Day {
  return a < b ? a : b;
}
