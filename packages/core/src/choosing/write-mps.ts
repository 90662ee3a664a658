import { buildModel } from './model.ts';
import type { Problem } from './problem.ts';
import { unreduced } from './reduce/reduce.ts';

/**
 * The un-reduced problem as free-format MPS text, for any other solver: minimise the loss in score units under the same
 * limits. Names are made safe and carry their number, so that none can be mistaken for a keyword. The constant part of the
 * loss stands as the objective's right-hand side, negated, as the format has it. The result must equal the plan's own loss.
 */
export function problemMps(problem: Problem): string {
  const { linear, names, constantLoss } = buildModel(unreduced(problem), { form: 'plain', bare: true });
  const column = (c: number) => safe(names[c] ?? '', 'c', c);
  const row = (r: number) => `r${r}`;
  const rows = linear.rowLower.length;
  const lines: string[] = ['NAME waymend FREE', 'ROWS', ' N loss'];
  for (let r = 0; r < rows; r++)
    lines.push(` ${typeOf(linear.rowLower[r] ?? 0, linear.rowUpper[r] ?? 0)} ${row(r)}`);

  const byColumn: [number, number][][] = Array.from({ length: linear.cost.length }, () => []);
  for (let r = 0; r < rows; r++) {
    for (let i = linear.start[r] ?? 0; i < (linear.start[r + 1] ?? 0); i++) {
      byColumn[linear.column[i] ?? 0]?.push([r, linear.value[i] ?? 0]);
    }
  }
  lines.push('COLUMNS');
  let whole = 0;
  byColumn.forEach((entries, c) => {
    const isWhole = linear.integer[c] ?? 0;
    if (isWhole !== whole) lines.push(` m${c} 'MARKER' '${isWhole === 1 ? 'INTORG' : 'INTEND'}'`);
    whole = isWhole;
    const cost = linear.cost[c] ?? 0;
    // Every column must appear, even one that stands nowhere else.
    if (cost !== 0 || entries.length === 0) lines.push(` ${column(c)} loss ${cost}`);
    for (const [r, value] of entries) lines.push(` ${column(c)} ${row(r)} ${value}`);
  });
  if (linear.integer.at(-1) === 1) lines.push(` mend 'MARKER' 'INTEND'`);

  lines.push('RHS');
  if (constantLoss !== 0) lines.push(` rhs loss ${-constantLoss}`);
  const ranges: string[] = [];
  for (let r = 0; r < rows; r++) {
    const low = linear.rowLower[r] ?? 0;
    const high = linear.rowUpper[r] ?? 0;
    const side = Number.isFinite(high) ? high : low;
    if (Number.isFinite(side) && side !== 0) lines.push(` rhs ${row(r)} ${side}`);
    if (Number.isFinite(low) && Number.isFinite(high) && low !== high)
      ranges.push(` rng ${row(r)} ${high - low}`);
  }
  if (ranges.length > 0) lines.push('RANGES', ...ranges);
  lines.push('BOUNDS');
  byColumn.forEach((_, c) => {
    const low = linear.lower[c] ?? 0;
    const high = linear.upper[c] ?? Number.POSITIVE_INFINITY;
    if (low === high) lines.push(` FX bnd ${column(c)} ${low}`);
    else {
      if (low !== 0) lines.push(` LO bnd ${column(c)} ${low}`);
      // A whole column without an upper bound would be read as binary by some readers.
      lines.push(Number.isFinite(high) ? ` UP bnd ${column(c)} ${high}` : ` PL bnd ${column(c)}`);
    }
  });
  lines.push('ENDATA', '');
  return lines.join('\n');
}

function typeOf(low: number, high: number): 'E' | 'L' | 'G' | 'N' {
  if (low === high) return 'E';
  if (Number.isFinite(high)) return 'L';
  return Number.isFinite(low) ? 'G' : 'N';
}

function safe(name: string, kind: string, number: number): string {
  return `${kind}${number}_${name.replace(/[^A-Za-z0-9]+/g, '_').slice(0, 40)}`;
}
