import { readNumberText } from '../record/number-text.ts';
import { amountIn } from '../record/quantity-text.ts';
import type { Column, ColumnKind } from './columns.ts';
import { columnsOf } from './columns.ts';
import type { LineReader } from './read-list.ts';
import type { ImportMatch, ImportReading, NotUnderstood } from './reading.ts';

/** One row of a table: its cells as text, and the line of the file it starts on. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** A cell that a spreadsheet program turned into a date. */
  readonly dated?: boolean;
}

/**
 * Reads a table row by row; columns are told by their headings, in any order. Without headings the cells of a row are read
 * one after the other as a line, but for a column of small whole numbers, which is the count. Every row that is not blank
 * is in the reading.
 */
export function readRows(
  rows: readonly TableRow[],
  reader: LineReader,
  catalogueGrams: (id: string) => number | null,
): ImportReading {
  const filled = rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const first = filled[0];
  const columns = first === undefined ? null : columnsOf(first.cells);
  const body = columns === null ? filled : filled.slice(1);
  const layout = columns ?? guessed(body);
  const matches: ImportMatch[] = [];
  const notUnderstood: NotUnderstood[] = [];
  for (const row of body) {
    const reading = readRow(row, layout, reader, catalogueGrams);
    matches.push(...reading.matches);
    notUnderstood.push(...reading.notUnderstood);
  }
  return {
    matches,
    notUnderstood,
    headings:
      columns === null || first === undefined ? [] : [{ line: first.line, text: first.cells.join(' | ') }],
  };
}

/** Without headings: a column of small whole numbers beside text is the count. */
function guessed(rows: readonly TableRow[]): readonly (Column | null)[] {
  const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
  const isCount = (i: number): boolean =>
    width > 1 &&
    rows.every(({ cells }) => /^\s*(?:[1-9]|[1-4]\d)?\s*$/.test(cells[i] ?? '')) &&
    rows.some(({ cells }) => (cells[i] ?? '').trim() !== '');
  const counts = Array.from({ length: width }, (_, i) => isCount(i));
  // Two such columns could be counts and sizes: then none is taken for a count.
  const one = counts.filter(Boolean).length === 1;
  return counts.map((count): Column => ({ kind: count && one ? 'copies' : 'name', unit: null }));
}

function readRow(
  row: TableRow,
  columns: readonly (Column | null)[],
  reader: LineReader,
  catalogueGrams: (id: string) => number | null,
): { readonly matches: readonly ImportMatch[]; readonly notUnderstood: readonly NotUnderstood[] } {
  const cell = (kind: ColumnKind): string =>
    row.cells
      .filter((_, i) => columns[i]?.kind === kind)
      .map((text) => text.trim())
      .filter((text) => text !== '')
      .join(kind === 'note' ? '; ' : ' ');
  const shown = row.cells
    .map((text) => text.trim())
    .filter((text) => text !== '')
    .join(' | ')
    .slice(0, 400);
  const missed = (reason: string, suggestion: string | null = null) => ({
    matches: [],
    notUnderstood: [{ line: row.line, text: shown, reason, suggestion }],
  });

  if (row.dated === true) {
    return missed('the spreadsheet made a date of a size or range; write it as text, like 10 to 12');
  }
  const copies = countOf(cell('copies'));
  if (copies === 'unreadable')
    return missed(`"${cell('copies').slice(0, 40)}" is not a count; write a whole number`);
  if (copies === 0) return missed('the count is 0, so nothing was added; write how many there are');
  const typed = [driveText(cell('drive')), cell('name'), sizeText(cell('size'))]
    .filter((text) => text !== '')
    .join(' ');
  if (typed === '') return missed('the row has no name; write what it is');
  const line = reader.read(typed, row.line);
  const mass = cell('mass');
  const massUnit = columns.find((column) => column?.kind === 'mass')?.unit ?? null;
  const price = priceOf(cell('price'));
  const location = cell('location');
  const note = [cell('note')].filter((text) => text !== '').join('; ');
  return {
    notUnderstood: line.notUnderstood.map((one) => ({ ...one, text: shown })),
    matches: line.matches.map((match): ImportMatch => {
      const common = {
        text: shown,
        ...(price === null ? {} : { price }),
        ...(location === '' ? {} : { location: location.slice(0, 200) }),
        ...(note === ''
          ? {}
          : {
              note: [match.note, note]
                .filter((text) => text !== undefined)
                .join('; ')
                .slice(0, 2000),
            }),
      };
      if (match.kind === 'set') return { ...match, ...common };
      const grams =
        line.matches.length > 1 ? null : massOf(mass, massUnit, catalogueGrams(match.catalogueId));
      return {
        ...match,
        ...common,
        copies: copies ?? match.copies,
        ...(grams === null ? {} : { grams: grams.grams, weighed: true }),
        ...(grams?.why === undefined
          ? {}
          : { why: grams.why, confidence: Number((match.confidence * 0.9).toFixed(3)) }),
      };
    }),
  };
}

function countOf(text: string): number | 'unreadable' | null {
  if (text === '') return null;
  const digits = /^(?:x\s*)?(\d{1,4})(?:[.,]0+)?\s*(?:x|pcs?|pieces?|stk\.?|st\.?|off|ea)?$/i.exec(text)?.[1];
  return digits === undefined ? 'unreadable' : Number(digits);
}

/** Square drives as sold in millimetres elsewhere: 6.3, 10, 12.5 and 20 mm. */
const DRIVES: readonly (readonly [number, string])[] = [
  [6.35, '1/4'],
  [9.75, '3/8'],
  [12.6, '1/2'],
  [19.5, '3/4'],
];

function driveText(text: string): string {
  if (text === '') return '';
  const number = readNumberText(text.replace(/["″']|\b(?:in|inch|zoll|mm|drive|dr)\b\.?/gi, '').trim());
  if (!number.ok) return text;
  const mm = number.value <= 1 ? number.value * 25.4 : number.value;
  const near = DRIVES.find(([width]) => Math.abs(width - mm) <= 0.06 * width);
  return near === undefined ? text : `${near[1]} drive`;
}

function sizeText(text: string): string {
  if (/^\d+(?:[.,]\d+)?$/.test(text)) return `${text} mm`;
  return /^\d+(?:-\d+)?\/\d+$/.test(text) ? `${text} in` : text;
}

/** Grams of one. Without a unit in cell or heading the one is taken that makes it likelier, and that is said. */
function massOf(
  text: string,
  unit: string | null,
  usual: number | null,
): { readonly grams: number; readonly why?: string } | null {
  if (text === '') return null;
  const bare = readNumberText(text);
  const written = bare.ok ? (unit === null ? null : `${text} ${unit}`) : text;
  if (written !== null) {
    const grams = amountIn('g', written);
    return grams.ok && grams.value >= 0 ? { grams: Math.round(grams.value) } : null;
  }
  if (!bare.ok || bare.value <= 0) return null;
  const far = (grams: number): number => Math.abs(Math.log(grams / Math.max(usual ?? 500, 1)));
  const inKilograms = far(bare.value * 1000) < far(bare.value);
  const grams = Math.round(inKilograms ? bare.value * 1000 : bare.value);
  return { grams, why: `the mass has no unit and was taken for ${inKilograms ? 'kilograms' : 'grams'}` };
}

function priceOf(text: string): number | null {
  const number = readNumberText(text.replace(/[^\d.,'\s-]/g, '').trim());
  return number.ok && number.value >= 0 && number.value < 1e7 ? Number(number.value.toFixed(2)) : null;
}
