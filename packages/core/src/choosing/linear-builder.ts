import type { LinearModel } from './solver-port.ts';

/** Collects columns and rows and packs them by rows. Coefficients of one column in one row add up. */
export class LinearBuilder {
  private readonly lower: number[] = [];
  private readonly upper: number[] = [];
  private readonly integer: number[] = [];
  private readonly rowLower: number[] = [];
  private readonly rowUpper: number[] = [];
  private readonly start: number[] = [0];
  private readonly columnOf: number[] = [];
  private readonly valueOf: number[] = [];

  get columns(): number {
    return this.lower.length;
  }

  get rows(): number {
    return this.rowLower.length;
  }

  column(lower: number, upper: number, integer: boolean): number {
    this.lower.push(lower);
    this.upper.push(upper);
    this.integer.push(integer ? 1 : 0);
    return this.lower.length - 1;
  }

  upperOf(column: number): number {
    return this.upper[column] ?? 0;
  }

  /** At least 1: as a bound, or as a row where the column cannot reach it (no solver likes crossed bounds). */
  require(column: number): void {
    if ((this.upper[column] ?? 0) >= 1) this.lower[column] = 1;
    else this.row(1, Infinity, [[column, 1]]);
  }

  row(lower: number, upper: number, terms: readonly (readonly [column: number, value: number])[]): number {
    const sums = new Map<number, number>();
    for (const [column, value] of terms) sums.set(column, (sums.get(column) ?? 0) + value);
    for (const [column, value] of sums) {
      if (value === 0) continue;
      this.columnOf.push(column);
      this.valueOf.push(value);
    }
    this.start.push(this.columnOf.length);
    this.rowLower.push(lower);
    this.rowUpper.push(upper);
    return this.rowLower.length - 1;
  }

  build(cost: Float64Array): LinearModel {
    return {
      cost,
      lower: Float64Array.from(this.lower),
      upper: Float64Array.from(this.upper),
      integer: Uint8Array.from(this.integer),
      rowLower: Float64Array.from(this.rowLower),
      rowUpper: Float64Array.from(this.rowUpper),
      start: Int32Array.from(this.start),
      column: Int32Array.from(this.columnOf),
      value: Float64Array.from(this.valueOf),
    };
  }
}
