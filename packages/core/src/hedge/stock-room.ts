import type { NeedIndex } from '../choosing/problem.ts';
import type { NeedPool } from './need-pool.ts';
import type { SceneJob, ScenePiece } from '../repairing/scene.ts';

/** So many jobs' worth of one stock, as a need. */
export interface StockLevel {
  readonly of: string;
  readonly times: number;
  readonly need: NeedIndex;
}

/** Combinations of levels tried for a job that uses several stocks; the bound of M5 is nearly flat long before. */
const MOST_COMBINATIONS = 64;

/** What the table holds of everything that is used up, and how much of it the trip is expected to ask for (M5). */
export class StockRoom {
  private readonly pool: NeedPool;
  private readonly units = new Map<string, { readonly piece: number; readonly units: number }[]>();
  private readonly total = new Map<string, number>();
  private readonly demands: ReadonlyMap<string, number>;

  constructor(pool: NeedPool, pieces: readonly ScenePiece[], demands: ReadonlyMap<string, number>) {
    this.pool = pool;
    this.demands = demands;
    pieces.forEach(({ stock }, piece) => {
      for (const { of, units } of stock) {
        if (units <= 0) continue;
        this.units.set(of, [...(this.units.get(of) ?? []), { piece, units }]);
        this.total.set(of, (this.total.get(of) ?? 0) + units);
      }
    });
  }

  demand(of: string): number {
    return this.demands.get(of) ?? 0;
  }

  /** Every combination of levels the table could give a job, least first; one empty combination when it uses nothing up. */
  levels(job: SceneJob): readonly (readonly StockLevel[])[] {
    let combos: (readonly StockLevel[])[] = [[]];
    for (const { of, units } of job.uses) {
      const most = Math.floor((this.total.get(of) ?? 0) / units);
      const levels: StockLevel[] = [];
      for (let times = 1; times <= most; times++) {
        const need = this.pool.enough(
          times * units,
          this.units.get(of) ?? [],
          `${of}, ${times * units} units`,
        );
        if (need !== null) levels.push({ of, times, need });
      }
      combos = combos
        .flatMap((combo) => levels.map((level) => [...combo, level]))
        .slice(0, MOST_COMBINATIONS);
    }
    return combos;
  }
}
