import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { readSheet } from 'read-excel-file/universal';
import type { ImportOptions } from './read-list.ts';
import type { TableRow } from './read-rows.ts';
import { readTableRows } from './read-table.ts';
import type { ImportReading } from './reading.ts';
import { checkZip } from './zip-contents.ts';

/**
 * Reads the first sheet of an .xlsx file. Formulas are never computed: a cell is what the file says it showed. The archive
 * is looked into before it is unpacked.
 */
export async function readSpreadsheet(
  bytes: Uint8Array,
  options: ImportOptions = {},
): Promise<Result<ImportReading>> {
  const name = options.name ?? 'the spreadsheet';
  const sound = await checkZip(bytes, name);
  if (!sound.ok) return sound;
  const rows = await rowsOf(bytes, name);
  return rows.ok ? readTableRows(rows.value, options, name) : rows;
}

async function rowsOf(bytes: Uint8Array, name: string): Promise<Result<readonly TableRow[]>> {
  try {
    const sheet: readonly (readonly unknown[])[] = await readSheet(Uint8Array.from(bytes).buffer);
    return ok(
      sheet.map((cells, i) => ({
        line: i + 1,
        cells: cells.slice(0, 60).map(cellText),
        dated: cells.some((cell) => cell instanceof Date),
      })),
    );
  } catch (error) {
    // The reader throws on anything that is no spreadsheet; what it says is for programmers.
    if (error instanceof Error) {
      return refuse(
        'spreadsheet-broken',
        `${name} is not a spreadsheet that can be read; save it as .xlsx or CSV again`,
      );
    }
    throw error;
  }
}

function cellText(cell: unknown): string {
  if (typeof cell === 'string') return cell.slice(0, 2_000);
  if (typeof cell === 'number') return String(Number(cell.toPrecision(12)));
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return cell instanceof Date ? cell.toISOString().slice(0, 10) : '';
}
