import { expect } from 'vitest';
import { readList } from '../../src/import/read-list.ts';
import type { ImportOptions } from '../../src/import/read-list.ts';
import type { ImportReading } from '../../src/import/reading.ts';

/** The reading of a list that must be readable. */
export function read(text: string, options: ImportOptions = {}): ImportReading {
  const reading = readList(text, options);
  if (!reading.ok) throw new Error(reading.error.message);
  return reading.value;
}

/** '2 CW-17, CW-19': what a reading says, in one text. */
export function said({ matches, notUnderstood }: ImportReading): string {
  return [
    ...matches.map((match) =>
      match.kind === 'set'
        ? `set ${match.setId}`
        : `${match.copies === 1 ? '' : `${match.copies} `}${match.catalogueId}${match.size === undefined ? '' : ` (${match.size})`}${match.handleMm === undefined ? '' : ` (${match.handleMm} long)`}`,
    ),
    ...notUnderstood.map(({ text }) => `? ${text}`),
  ].join(', ');
}

/** Any text that holds this one. */
export function containing(text: string): unknown {
  return expect.stringContaining(text);
}
