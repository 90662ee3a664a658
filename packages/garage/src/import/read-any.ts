import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { textOfBytes } from '../file/text-of-bytes.ts';
import type { ImportOptions } from './read-list.ts';
import { readList } from './read-list.ts';
import { readSpreadsheet } from './read-spreadsheet.ts';
import { looksLikeTable, readTable } from './read-table.ts';
import type { ImportReading } from './reading.ts';

export interface AnyReading {
  readonly reading: ImportReading;
  /** The text when it is a typed list, which may be mended where it stands; null for tables and spreadsheets. */
  readonly list: string | null;
}

/**
 * Reads whatever file an owner keeps belongings in: typed list, CSV in any column order, spreadsheet. Refuses archives that
 * are none, what is too large or no text, and a garage file, which is opened and not added to.
 */
export async function readAny(
  bytes: Uint8Array,
  options: ImportOptions & { readonly name: string },
): Promise<Result<AnyReading>> {
  const { name } = options;
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) {
    const reading = await readSpreadsheet(bytes, options);
    return reading.ok ? ok({ reading: reading.value, list: null }) : reading;
  }
  const text = textOfBytes(bytes, name);
  if (!text.ok) return text;
  if (/^\uFEFF?(?:#[^\n]*\n|\s)*(?:waymend\s*:|\{\s*"waymend"\s*:)/.test(text.value.slice(0, 4_000)))
    return refuse('list-is-garage', `${name} is a whole garage, not a list; open it as a copy of the record`);
  const isTable = /\.(csv|tsv)$/i.test(name) || looksLikeTable(text.value);
  const reading = isTable ? readTable(text.value, options) : readList(text.value, options);
  return reading.ok ? ok({ reading: reading.value, list: isTable ? null : text.value }) : reading;
}
