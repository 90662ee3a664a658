import type { Day } from './calendar.ts';
import { addDays } from './calendar.ts';

/** A whole day in somebody's calendar. */
export interface CalendarEntry {
  /** Of the garage: the same entry has the same id for ever, so that a second import replaces the first. */
  readonly id: string;
  readonly on: Day;
  readonly summary: string;
  readonly description: string;
}

/** A line is at most this many octets of UTF-8 before its break (RFC 5545, 3.1). */
const MOST_OCTETS = 75;

/**
 * Entries as an iCalendar text (RFC 5545): all-day events that keep nobody busy. `stamp` is the day they were worked out; no clock is read.
 */
export function calendarText(name: string, stamp: Day, entries: readonly CalendarEntry[]): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Waymend//Care and looks//EN',
    'CALSCALE:GREGORIAN',
    `NAME:${escaped(name)}`,
    ...entries.flatMap(({ id, on, summary, description }) => [
      'BEGIN:VEVENT',
      `UID:${escaped(id)}@waymend`,
      `DTSTAMP:${compact(stamp)}T000000Z`,
      `DTSTART;VALUE=DATE:${compact(on)}`,
      `DTEND;VALUE=DATE:${compact(addDays(on, 1))}`,
      `SUMMARY:${escaped(summary)}`,
      `DESCRIPTION:${escaped(description)}`,
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return lines.flatMap(folded).join('\r\n').concat('\r\n');
}

function compact(day: Day): string {
  return day.replaceAll('-', '');
}

/** TEXT of RFC 5545, 3.3.11. Control characters have no place in it; a lone half of a pair cannot be written at all. */
function escaped(text: string): string {
  return text
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd')
    .replace(/\r\n?/g, '\n')
    .replace(/(?![\n\t])\p{Cc}/gu, ' ')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');
}

/** Continuation lines begin with a space, and no character is cut in two. */
function folded(line: string): readonly string[] {
  const out: string[] = [];
  let current = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > MOST_OCTETS) {
      out.push(current);
      current = ' ';
      octets = 1;
    }
    current += character;
    octets += size;
  }
  return [...out, current];
}

function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
