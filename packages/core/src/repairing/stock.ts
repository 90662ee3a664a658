import type { PieceIndex } from '../choosing/problem.ts';
import type { Met, NeedGraph } from './need-graph.ts';
import type { SceneJob, ScenePiece, Trouble } from './scene.ts';

/** Units may be parts of a litre: they are counted in thousandths, so that they add up exactly. */
const PARTS = 1000;

interface Holder {
  readonly piece: PieceIndex;
  readonly parts: number;
}

/** What is used up, by stock word, over everything on the table (M5). */
export class Stock {
  private readonly holders = new Map<string, Holder[]>();
  private readonly sums = new Map<string, readonly number[]>();

  constructor(pieces: readonly ScenePiece[]) {
    pieces.forEach(({ stock }, piece) => {
      for (const { of, units } of stock) {
        const list = this.holders.get(of) ?? [];
        list.push({ piece, parts: Math.round(units * PARTS) });
        this.holders.set(of, list);
      }
    });
  }

  /** How many times pieces that could come along allow a use of so many units: every number that can be had, rising. */
  levels(of: string, units: number): readonly number[] {
    const each = Math.round(units * PARTS);
    const times = new Set(this.sumsOf(of).map((sum) => Math.floor(sum / each)));
    times.delete(0);
    return [...times].sort((a, b) => a - b);
  }

  /** Enough aboard for so many uses of so many units. */
  need(graph: NeedGraph, of: string, units: number, times: number): Met {
    const asked = Math.round(units * PARTS) * times;
    const held = new Map<PieceIndex, number>();
    for (const { piece, parts } of this.holders.get(of) ?? [])
      held.set(piece, (held.get(piece) ?? 0) + parts);
    const need = graph.enough(
      asked,
      [...held].map(([piece, parts]) => ({ piece, units: parts })),
    );
    if (need !== null) graph.name(need, `${of} for ${times === 1 ? 'once' : `${times} times`}`);
    return need;
  }

  /** Every amount of a word that some set of pieces makes up. */
  private sumsOf(of: string): readonly number[] {
    const known = this.sums.get(of);
    if (known !== undefined) return known;
    const sums = new Set([0]);
    for (const { parts } of this.holders.get(of) ?? [])
      if (parts > 0) for (const sum of [...sums]) sums.add(sum + parts);
    const list = [...sums];
    this.sums.set(of, list);
    return list;
  }
}

/**
 * Expected demand on each stock word (M5): over every trouble with a job in reach that uses it, the expected events times the
 * best chance of those jobs with the best tools on the table. Only repairs that succeed use a part up, which is what makes
 * kappa exact where there is one user.
 *
 * @param chanceOf Best chance of a job against a trouble, stock granted; 0 where it is out of reach.
 */
export function demandOn(
  troubles: readonly Trouble[],
  jobsOf: (trouble: Trouble) => readonly SceneJob[],
  chanceOf: (trouble: Trouble, job: SceneJob) => number,
): ReadonlyMap<string, number> {
  const demand = new Map<string, number>();
  for (const trouble of troubles) {
    const most = new Map<string, number>();
    for (const job of jobsOf(trouble)) {
      if (job.uses.length === 0) continue;
      const chance = chanceOf(trouble, job);
      for (const { of } of job.uses) most.set(of, Math.max(most.get(of) ?? 0, chance));
    }
    for (const [of, chance] of most) demand.set(of, (demand.get(of) ?? 0) + trouble.expected * chance);
  }
  return demand;
}
