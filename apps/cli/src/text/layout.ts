/** Text for a terminal of 100 columns: nothing here is wider, whatever a name is. */
export const WIDTH = 100;

export type Align = 'left' | 'right';

export interface Column {
  readonly title: string;
  readonly align?: Align;
  /** Takes what is left of the width; its text is wrapped. At most one. */
  readonly grow?: boolean;
}

/** Control characters of a hostile name never reach the terminal. */
export function plain(text: string): string {
  return text.replace(/\p{Cc}/gu, ' ');
}

/** Words wrapped to a width; a word longer than the width is cut. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of plain(text)
    .split(/\s+/)
    .filter((w) => w !== '')) {
    let rest = word;
    while (rest.length > width) {
      if (line !== '') lines.push(line);
      line = '';
      lines.push(rest.slice(0, width));
      rest = rest.slice(width);
    }
    if (line !== '' && line.length + 1 + rest.length > width) {
      lines.push(line);
      line = rest;
    } else {
      line = line === '' ? rest : `${line} ${rest}`;
    }
  }
  if (line !== '') lines.push(line);
  return lines.length === 0 ? [''] : lines;
}

/** Rows under titles, two spaces between columns, the growing column wrapped and indented under itself. */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  indent = 2,
): string[] {
  const widths = columns.map((c, i) =>
    c.grow ? 0 : Math.max(c.title.length, ...rows.map((r) => plain(r[i] ?? '').length)),
  );
  const fixed = widths.reduce((sum, w) => sum + w, 0) + 2 * (columns.length - 1) + indent;
  const growing = columns.findIndex((c) => c.grow);
  if (growing >= 0) {
    const longest = Math.max(
      columns[growing]?.title.length ?? 0,
      ...rows.map((r) => plain(r[growing] ?? '').length),
    );
    widths[growing] = Math.max(12, Math.min(longest, WIDTH - fixed));
  }
  const out: string[] = [];
  const pad = (text: string, i: number) => {
    const width = widths[i] ?? 0;
    const cut = text.length > width ? `${text.slice(0, Math.max(0, width - 1))}…` : text;
    return columns[i]?.align === 'right' ? cut.padStart(width) : cut.padEnd(width);
  };
  const push = (cells: readonly string[]) => {
    const parts = cells.map((cell, i) => (i === growing ? wrap(cell, widths[i] ?? 12) : [plain(cell)]));
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

/** A paragraph wrapped to the terminal, with a hanging indent. */
export function paragraph(text: string, indent = 0, hang = indent): string[] {
  const lines = wrap(text, WIDTH - Math.max(indent, hang));
  return lines.map((line, i) => `${' '.repeat(i === 0 ? indent : hang)}${line}`);
}
