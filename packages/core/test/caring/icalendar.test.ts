import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendarText } from '../../src/caring/icalendar.ts';

interface Property {
  readonly name: string;
  readonly parameters: string;
  readonly value: string;
}

/** A strict reader after RFC 5545: 3.1 (lines, folding), 3.3.11 (text), 3.6.1 (event). It knows nothing of the writer. */
function readCalendar(text: string): readonly (readonly Property[])[] {
  expect(text.endsWith('\r\n')).toBe(true);
  const octets = new TextEncoder();
  const raw = text.slice(0, -2).split('\r\n');
  for (const line of raw) {
    expect(octets.encode(line).length, line).toBeLessThanOrEqual(75);
    expect(line).not.toMatch(/[\r\n]/);
    // A cut within a character would have left halves that cannot be encoded.
    expect(new TextDecoder('utf-8', { fatal: true }).decode(octets.encode(line))).toBe(line);
  }
  const lines: string[] = [];
  for (const line of raw) {
    if (line.startsWith(' ')) lines[lines.length - 1] = `${lines.at(-1) ?? ''}${line.slice(1)}`;
    else lines.push(line);
  }
  const properties = lines.map((line): Property => {
    const match = /^([A-Z-]+)((?:;[A-Z-]+=[A-Z]+)*):(.*)$/su.exec(line);
    if (match === null) throw new Error(`not a content line: ${line}`);
    return { name: match[1] ?? '', parameters: match[2] ?? '', value: match[3] ?? '' };
  });
  const named = (p: Property | undefined) => `${p?.name ?? ''}:${p?.value ?? ''}`;
  expect(named(properties[0])).toBe('BEGIN:VCALENDAR');
  expect(named(properties.at(-1))).toBe('END:VCALENDAR');
  expect(properties.filter((p) => p.name === 'VERSION').map((p) => p.value)).toEqual(['2.0']);
  expect(properties.filter((p) => p.name === 'PRODID')).toHaveLength(1);
  const events: Property[][] = [];
  let open: Property[] | null = null;
  for (const p of properties) {
    if (named(p) === 'BEGIN:VEVENT') open = [];
    else if (named(p) === 'END:VEVENT') {
      if (open === null) throw new Error('an event ends that did not begin');
      events.push(open);
      open = null;
    } else open?.push(p);
  }
  expect(open).toBeNull();
  for (const event of events)
    for (const once of ['UID', 'DTSTAMP', 'DTSTART', 'SUMMARY', 'DESCRIPTION'])
      expect(
        event.filter((p) => p.name === once),
        once,
      ).toHaveLength(1);
  return events;
}

/** TEXT read back: a backslash escapes itself, a comma, a semicolon or an n, and nothing else. */
function textValue(value: string): string {
  expect(value.replace(/\\[\\;,nN]/g, '')).not.toMatch(/[\\;,]/);
  return value.replace(/\\([\\;,nN])/g, (_, c: string) => (c.toLowerCase() === 'n' ? '\n' : c));
}

const of = (event: readonly Property[] | undefined, name: string) => event?.find((p) => p.name === name);

describe('a calendar', () => {
  it('holds whole days with ids that last, a stamp that was passed in, and nobody busy', () => {
    const text = calendarText('Kit; mine', '2026-03-01', [
      { id: 'care-pack-x', on: '2026-12-31', summary: 'Charge, then stow', description: 'One\nTwo \\ three' },
    ]);
    const [event] = readCalendar(text);
    expect(of(event, 'UID')?.value).toBe('care-pack-x@waymend');
    expect(of(event, 'DTSTAMP')?.value).toBe('20260301T000000Z');
    expect(of(event, 'DTSTART')).toEqual({ name: 'DTSTART', parameters: ';VALUE=DATE', value: '20261231' });
    expect(of(event, 'DTEND')?.value).toBe('20270101');
    expect(of(event, 'TRANSP')?.value).toBe('TRANSPARENT');
    expect(of(event, 'SUMMARY')?.value).toBe('Charge\\, then stow');
    expect(textValue(of(event, 'DESCRIPTION')?.value ?? '')).toBe('One\nTwo \\ three');
  });

  it('folds at 75 octets without cutting a character, and gives every text back', () => {
    const words = fc.string({ unit: 'grapheme', maxLength: 120 });
    fc.assert(
      fc.property(words, words, (summary, description) => {
        const [event] = readCalendar(
          calendarText('x', '2026-03-01', [{ id: 'a', on: '2026-03-02', summary, description }]),
        );
        expect(textValue(of(event, 'SUMMARY')?.value ?? '')).toBe(summary);
        expect(textValue(of(event, 'DESCRIPTION')?.value ?? '')).toBe(description);
      }),
      { numRuns: 300 },
    );
  });

  it('stays one calendar whatever a name holds: control characters and half pairs do not get in', () => {
    const nasty = 'a\u0000b\r\nEND:VCALENDAR\r\nBEGIN:VEVENT\ud800 c';
    const events = readCalendar(
      calendarText(nasty, '2026-03-01', [{ id: 'a', on: '2026-03-02', summary: nasty, description: nasty }]),
    );
    expect(events).toHaveLength(1);
    expect(textValue(of(events[0], 'SUMMARY')?.value ?? '')).toBe('a b\nEND:VCALENDAR\nBEGIN:VEVENT\ufffd c');
  });
});
