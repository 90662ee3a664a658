import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import Papa from 'papaparse';
import { whyNoText } from '../file/limits.ts';
import { SHIPPED_CATALOGUE } from './catalogue.ts';
import type { ImportOptions } from './read-list.ts';
import { lineReaderOf } from './read-list.ts';
import type { TableRow } from './read-rows.ts';
import { readRows } from './read-rows.ts';
import type { ImportReading } from './reading.ts';

const MOST_ROWS = 5_000;
const MOST_CELLS = 60;
/** Longest cell that is looked at; a cell is one thing. */
const LONGEST_CELL = 2_000;

/** Reads CSV with commas, semicolons or tabs, columns in any order, decimal commas included. */
export function readTable(text: string, options: ImportOptions = {}): Result<ImportReading> {
  const name = options.name ?? 'the table';
  const unreadable = whyNoText(text, name, 'list');
  if (unreadable !== null) return { ok: false, error: unreadable };
  const plain = text.replace(/^\uFEFF/, '');
  const parsed = Papa.parse<string[]>(plain, {
    delimiter: delimiterOf(plain),
    skipEmptyLines: false,
    header: false,
  });
  let line = 1;
  const rows = parsed.data.map((cells): TableRow => {
    const row = { line, cells: cells.slice(0, MOST_CELLS).map(unescaped) };
    line += 1 + cells.reduce((sum, cell) => sum + (cell.split('\n').length - 1), 0);
    return row;
  });
  return readTableRows(rows, options, name);
}

/** Rows of any table, from CSV or a spreadsheet. */
export function readTableRows(
  rows: readonly TableRow[],
  options: ImportOptions,
  name: string,
): Result<ImportReading> {
  if (rows.length > MOST_ROWS) {
    return refuse(
      'table-too-long',
      `${name} has ${rows.length} rows and at most ${MOST_ROWS} are read; split it`,
    );
  }
  const grams = new Map(
    (options.catalogue ?? SHIPPED_CATALOGUE).belongings.map((entry) => [entry.id, entry.grams]),
  );
  return ok(readRows(rows, lineReaderOf(options), (id) => grams.get(id) ?? null));
}

/** Whether a text is a table rather than a typed list: headings, or the same number of semicolons or tabs in most lines. */
export function looksLikeTable(text: string): boolean {
  const lines = text.split(/\r\n|\r|\n/, 40).filter((line) => line.trim() !== '');
  const [first] = lines;
  if (first === undefined) return false;
  const even = (mark: string): boolean => {
    const counts = lines.map((line) => countOutsideQuotes(line, mark));
    const usual = counts[0] ?? 0;
    return (
      usual > 0 && lines.length > 1 && counts.filter((count) => count === usual).length >= 0.9 * lines.length
    );
  };
  if (even(';') || even('\t')) return true;
  return even(',') && /\b(?:name|item|description|tool|qty|quantity|count|size)\b/i.test(first);
}

/** The mark most lines have most of; a tab before a semicolon before a comma, since commas are also decimals. */
function delimiterOf(text: string): string {
  const lines = text.split(/\r\n|\r|\n/, 30).filter((line) => line.trim() !== '');
  const usual = (mark: string): number => {
    const counts = lines.map((line) => countOutsideQuotes(line, mark)).sort((a, b) => a - b);
    return counts[Math.floor(counts.length / 2)] ?? 0;
  };
  return ['\t', ';', ','].find((mark) => usual(mark) > 0) ?? ';';
}

function countOutsideQuotes(line: string, mark: string): number {
  return line.replace(/"[^"]*"/g, '').split(mark).length - 1;
}

/** Text that a table program is kept from computing ("'=1+1") comes back as it was; nothing is ever computed. */
function unescaped(cell: string): string {
  const text = cell.slice(0, LONGEST_CELL);
  return /^'[=+\-@\t\r]/.test(text) ? text.slice(1) : text;
}
