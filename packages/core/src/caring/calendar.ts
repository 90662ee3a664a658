/** Days of the calendar as the record writes them, '2026-03-05'. No clock is read and no time zone plays a part. */
export type Day = string;

/** Days of 400 years of the Gregorian calendar, with their 97 leap days. */
const DAYS_400 = 146_097;
/** From 1 March of the year 0, where leap days end a year, to 1970-01-01. */
const TO_1970 = 719_468;

/** Days since 1970-01-01. Throws on what is no day: days of a garage have been read already. */
export function dayNumber(day: Day): number {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  const [year = 0, month = 0, date = 0] = (match?.slice(1) ?? []).map(Number);
  if (match === null || month < 1 || month > 12 || date < 1 || date > daysIn(year, month))
    throw new Error(`"${day}" is not a day`);
  return numberOf(year, month, date);
}

/** The year begins in March here, so that the lengths of its months fall into one line: 153 days for every five. */
function numberOf(year: number, month: number, date: number): number {
  const y = month > 2 ? year : year - 1;
  const fromMarch = (month + 9) % 12;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return 365 * y + leaps + Math.floor((153 * fromMarch + 2) / 5) + date - 1 - TO_1970;
}

function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  if (month === 2) return leap ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

export function dayOf(number: number): Day {
  // The guess is never after the year and at most one before it.
  let year = Math.floor((number * 400) / DAYS_400) + 1969;
  while (numberOf(year + 1, 1, 1) <= number) year += 1;
  let month = 12;
  while (numberOf(year, month, 1) > number) month -= 1;
  return written(year, month, number - numberOf(year, month, 1) + 1);
}

function written(year: number, month: number, date: number): Day {
  const digits = (value: number, width: number) => String(value).padStart(width, '0');
  return `${digits(year, 4)}-${digits(month, 2)}-${digits(date, 2)}`;
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
  const whole = year * 12 + month - 1 + months;
  const [y, m] = [Math.floor(whole / 12), (((whole % 12) + 12) % 12) + 1];
  return written(y, m, Math.min(date, daysIn(y, m)));
}

/** So many years later, in whole months. */
export function addYears(day: Day, years: number): Day {
  return addMonths(day, Math.round(years * 12));
}

/** The earlier of two days. Days sort as text. */
export function earlier(a: Day, b: Day): Day {
  return a < b ? a : b;
}
