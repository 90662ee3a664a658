const DAY = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});

/** A day of the record, '2026-07-04', as people write it: '4 July 2026'. What is no day stays as it is written. */
export function dayWords(day: string): string {
  const time = Date.parse(`${day}T00:00:00Z`);
  return Number.isNaN(time) ? day : DAY.format(time);
}
