import type { Unit } from './table-units.ts';
import { readNumber, toSi, UNIT_NAMES } from './table-units.ts';

/**
 * A standard's table is one file of data: where it is from, its columns in the unit the source prints, its rows in
 * source order, and its own checks. Facts only; nothing of the wording of a standard is kept.
 */

/** How a value was come by, best first. `gap`: the source has a value here that nobody has supplied yet. */
export const STATUSES = ['verified', 'computed', 'common-practice', 'estimate', 'recalled', 'gap'] as const;
export type Status = (typeof STATUSES)[number];

/** `original`: the standard itself was read; `secondary`: something that quotes it was. */
export type Obtained = 'original' | 'secondary' | 'recalled' | 'computed' | 'common-practice';

export interface Citation {
  /** Who issued it: 'ISO', 'SAE', 'US Code of Federal Regulations'. */
  readonly body: string;
  readonly document: string;
  /** Year or issue; says so when the copy that was read does not state it. */
  readonly edition: string;
  /** Clause, table, page. */
  readonly part: string;
  readonly obtained: Obtained;
  /** What was read, when it was not the document itself. */
  readonly through?: string;
  readonly readOn?: string;
  readonly url?: string;
}

export interface Column {
  readonly title: string;
  readonly unit: Unit;
  /** Overrides the table's status for this column. */
  readonly status?: Status;
  /** The column may have gaps (null). */
  readonly gaps?: true;
}
export type Columns = Readonly<Record<string, Column>>;

export type Cell = string | number | null;
type CellOf<U extends Unit> = U extends 'text' ? string : U extends 'in' ? string | number : number;

/** One row, cell by column, with its own status and remark where it differs from the rest. */
export type Row<C extends Columns> = {
  readonly [K in keyof C]: C[K] extends { readonly gaps: true }
    ? CellOf<C[K]['unit']> | null
    : CellOf<C[K]['unit']>;
} & { readonly status?: Status; readonly note?: string };

export type AnyRow = Readonly<Record<string, Cell | undefined>>;

/** A named rule that the rows must keep; `run` returns one plain sentence per breach. */
export interface Check<R> {
  readonly name: string;
  // A method, so that a check of a few columns serves every table that has them.
  run(rows: readonly R[], columns: Columns): readonly string[];
}

export interface Table<R extends AnyRow = AnyRow> {
  /** Stable, kebab-case; the name of the file that holds it. */
  readonly id: string;
  readonly title: string;
  readonly citation: Citation;
  /** Status of every cell whose row and column say nothing else. */
  readonly status: Status;
  readonly columns: Columns;
  readonly rows: readonly R[];
  readonly checks: readonly Check<R>[];
}

interface TableText<C extends Columns> {
  readonly id: string;
  readonly title: string;
  readonly citation: Citation;
  readonly status?: Status;
  readonly columns: C;
  readonly rows: readonly NoInfer<Row<C>>[];
  readonly checks: readonly Check<NoInfer<Row<C>>>[];
}

const DEFAULT_STATUS: Readonly<Record<Obtained, Status>> = {
  original: 'verified',
  secondary: 'verified',
  recalled: 'recalled',
  computed: 'computed',
  'common-practice': 'common-practice',
};

/** Fixes a table's types and freezes it. Its checks are run by `checkTable`, not here, so that a bad row can be shown. */
export function defineTable<const C extends Columns>(text: TableText<C>): Table<Row<C>> {
  return Object.freeze({ ...text, status: text.status ?? DEFAULT_STATUS[text.citation.obtained] });
}

export interface TableFault {
  readonly table: string;
  /** The name of the check that failed; 'cells' and 'citation' are every table's own. */
  readonly check: string;
  readonly message: string;
}

const ROW_WORDS: readonly string[] = ['status', 'note'];

function cellFaults(table: Table): string[] {
  const faults: string[] = [];
  for (const [index, row] of table.rows.entries()) {
    const where = `row ${index + 1}`;
    for (const key of Object.keys(row)) {
      if (!ROW_WORDS.includes(key) && !(key in table.columns)) faults.push(`${where}: no column ${key}`);
    }
    for (const [key, column] of Object.entries(table.columns)) {
      const cell = row[key];
      if (cell === undefined) faults.push(`${where}: ${key} is missing`);
      else if (cell === null) {
        if (column.gaps !== true) faults.push(`${where}: ${key} may not be empty`);
      } else if (column.unit === 'text') {
        if (typeof cell !== 'string' || cell.trim() === '') faults.push(`${where}: ${key} must be words`);
      } else if (readNumber(cell) === null) faults.push(`${where}: ${key} is not a number: ${cell}`);
      else if (typeof cell === 'string' && column.unit !== 'in')
        faults.push(`${where}: ${key} is printed in ${column.unit}, only inches are fractions`);
    }
  }
  return faults;
}

function frameFaults(table: Table): string[] {
  const faults: string[] = [];
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(table.id)) faults.push(`"${table.id}" is not a kebab-case id`);
  const { body, document, edition, part, obtained, through } = table.citation;
  for (const [word, value] of Object.entries({ body, document, edition, part, title: table.title })) {
    if (value.trim() === '') faults.push(`${word} is empty`);
  }
  if (obtained === 'secondary' && through === undefined)
    faults.push('a table from a secondary source must say through what');
  if (table.rows.length === 0) faults.push('no rows');
  if (table.checks.length === 0) faults.push('no checks of its own');
  for (const [key, column] of Object.entries(table.columns)) {
    if (!UNIT_NAMES.includes(column.unit)) faults.push(`${key}: no unit ${column.unit}`);
    if (ROW_WORDS.includes(key)) faults.push(`${key} is kept for rows and cannot be a column`);
  }
  return faults;
}

/** Runs every table's common checks, then its own. Empty when the table is sound. */
export function checkTable<R extends AnyRow>(table: Table<R>): readonly TableFault[] {
  const fault = (check: string) => (message: string) => ({ table: table.id, check, message });
  const cells = cellFaults(table);
  return [
    ...frameFaults(table).map(fault('citation')),
    ...cells.map(fault('cells')),
    // A table with malformed cells cannot be reasoned about further.
    ...(cells.length > 0
      ? []
      : table.checks.flatMap((check) => check.run(table.rows, table.columns).map(fault(check.name)))),
  ];
}

/** The same table with other rows: what a corrected, extended or doubtful copy looks like to its checks. */
export function withRows<R extends AnyRow>(table: Table<R>, rows: readonly R[]): Table<R> {
  return { ...table, rows };
}

/** The printed number of a cell (inch fractions read), or null for a gap. */
export function printed<R extends AnyRow>(row: R, key: keyof R & string): number | null {
  const cell = row[key] ?? null;
  return cell === null ? null : readNumber(cell);
}

/** A cell in SI (see `toSi`), or null for a gap. */
export function si<R extends AnyRow>(table: Table<R>, row: R, key: keyof R & string): number | null {
  const column = table.columns[key];
  const value = printed(row, key);
  return column === undefined || value === null ? null : toSi(value, column.unit);
}

/** The weaker of a row's and its column's status; a gap where the cell is empty. */
export function statusOf<R extends AnyRow>(table: Table<R>, row: R, key: keyof R & string): Status {
  if (row[key] === null) return 'gap';
  const stated = [row['status'], table.columns[key]?.status].flatMap((word) => {
    const status = STATUSES.find((known) => known === word);
    return status === undefined ? [] : [status];
  });
  return stated.sort((a, b) => STATUSES.indexOf(b) - STATUSES.indexOf(a))[0] ?? table.status;
}
