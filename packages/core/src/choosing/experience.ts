/**
 * What branching on each column has added to the bound so far, per unit moved, up and down. Kept for the whole life of a
 * problem's model: the next cap on the curve branches on what decided the last one.
 */
export class Experience {
  /** Prior: a column that stands in many rows (a drive handle) decides more than one that stands in few. */
  private readonly weight: Float64Array;
  private readonly upGain: Float64Array;
  private readonly upCount: Float64Array;
  private readonly downGain: Float64Array;
  private readonly downCount: Float64Array;
  private perWeight = 0;
  private learnt = 0;

  constructor(columns: number, columnOfEntry: Int32Array) {
    this.weight = new Float64Array(columns);
    for (const j of columnOfEntry) this.weight[j] = (this.weight[j] ?? 0) + 1;
    this.upGain = new Float64Array(columns);
    this.upCount = new Float64Array(columns);
    this.downGain = new Float64Array(columns);
    this.downCount = new Float64Array(columns);
  }

  /** `gain`: rise of the bound per unit the column was moved. */
  learn(column: number, up: boolean, gain: number): void {
    const [gains, counts] = up ? [this.upGain, this.upCount] : [this.downGain, this.downCount];
    gains[column] = (gains[column] ?? 0) + gain;
    counts[column] = (counts[column] ?? 0) + 1;
    this.perWeight += gain / Math.max(1, this.weight[column] ?? 1);
    this.learnt++;
  }

  /** Promise of branching on a column of this fractional value: what both children may gain, multiplied. */
  score(column: number, value: number): number {
    const up = (1 - value) * this.expected(this.upGain, this.upCount, column);
    const down = value * this.expected(this.downGain, this.downCount, column);
    return Math.max(up, 1e-3) * Math.max(down, 1e-3);
  }

  private expected(gains: Float64Array, counts: Float64Array, column: number): number {
    const count = counts[column] ?? 0;
    if (count > 0) return (gains[column] ?? 0) / count;
    const usual = this.learnt > 0 ? this.perWeight / this.learnt : 1;
    return usual * (this.weight[column] ?? 1);
  }
}
