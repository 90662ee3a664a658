import type { Paint } from './paint.ts';
import { cutTo, widthOf } from './width.ts';

/** Text for a terminal of 100 columns: nothing here is wider, whatever a name is. */
export const WIDTH = 100;

export type Align = 'left' | 'right';

export interface Column {
  readonly title: string;
  readonly align?: Align;
  /** Takes what is left of the width; its text is wrapped. At most one. */
  readonly grow?: boolean;
  /** At most this wide; longer text is cut. */
  readonly most?: number;
}

/** What moves the cursor, paints, breaks a line or turns the direction of writing; in a name it never reaches the terminal. */
const HARMFUL = /[\p{Cc}\p{Zl}\p{Zp}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

export function plain(text: string): string {
  return text.replace(HARMFUL, ' ');
}

/** Words wrapped to a width; a word longer than the width is cut. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of plain(text)
    .split(/\s+/)
    .filter((w) => w !== '')) {
    let rest = word;
    while (widthOf(rest) > width) {
      if (line !== '') lines.push(line);
      line = '';
      const start = cutTo(rest, width);
      lines.push(start);
      rest = rest.slice(start.length);
    }
    if (line !== '' && widthOf(line) + 1 + widthOf(rest) > width) {
      lines.push(line);
      line = rest;
    } else {
      line = line === '' ? rest : `${line} ${rest}`;
    }
  }
  if (line !== '') lines.push(line);
  return lines.length === 0 ? [''] : lines;
}

/** The growing column gets at least this much; the others are cut where that leaves them too little. */
const LEAST_GROWN = 20;

/** Rows under titles, two spaces between columns, the growing column wrapped and indented under itself. */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  indent = 2,
): string[] {
  const growing = columns.findIndex((c) => c.grow);
  const widths = columns.map((c, i) =>
    Math.min(c.most ?? WIDTH, Math.max(widthOf(c.title), ...rows.map((r) => widthOf(plain(r[i] ?? ''))))),
  );
  const wanted = widths[growing] ?? 0;
  if (growing >= 0) widths[growing] = Math.min(wanted, LEAST_GROWN);
  const room = WIDTH - indent - 2 * (columns.length - 1);
  const taken = () => widths.reduce((sum, w) => sum + w, 0);
  while (taken() > room) {
    const widest = widths.indexOf(Math.max(...widths));
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  if (growing >= 0) widths[growing] = Math.min(wanted, (widths[growing] ?? 0) + room - taken());
  const out: string[] = [];
  const pad = (text: string, i: number) => {
    const width = widths[i] ?? 0;
    const cut = widthOf(text) > width ? `${cutTo(text, Math.max(0, width - 1))}…` : text;
    const space = ' '.repeat(Math.max(0, width - widthOf(cut)));
    return columns[i]?.align === 'right' ? `${space}${cut}` : `${cut}${space}`;
  };
  const push = (cells: readonly string[]) => {
    const parts = cells.map((cell, i) =>
      i === growing ? wrap(cell, widths[i] ?? LEAST_GROWN) : [plain(cell)],
    );
    const height = Math.max(...parts.map((p) => p.length));
    for (let line = 0; line < height; line++) {
      out.push(
        `${' '.repeat(indent)}${columns.map((_, i) => pad(parts[i]?.[line] ?? '', i)).join('  ')}`.trimEnd(),
      );
    }
  };
  if (columns.some((c) => c.title !== '')) push(columns.map((c) => c.title));
  for (const row of rows) push(row);
  return out;
}

/** A heading, wrapped like a paragraph, in bold where the terminal can do that. */
export function heading(text: string, paint: Paint): string[] {
  return paragraph(text).map(paint.strong);
}

/** A paragraph wrapped to the terminal, with a hanging indent. */
export function paragraph(text: string, indent = 0, hang = indent): string[] {
  const lines = wrap(text, WIDTH - Math.max(indent, hang));
  return lines.map((line, i) => `${' '.repeat(i === 0 ? indent : hang)}${line}`);
}
