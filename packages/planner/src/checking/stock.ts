import type { Scene, SceneJob, ScenePiece, Trouble } from '@waymend/core/repairing/scene';
import type { JobMarks } from './jobs.ts';
import { reachesHelp } from './jobs.ts';
import { gradeFactor } from './marks.ts';
import { kappa } from './poisson.ts';

/** Units of each stock word in these pieces. */
export function stockAboard(pieces: readonly ScenePiece[]): ReadonlyMap<string, number> {
  const aboard = new Map<string, number>();
  for (const piece of pieces) {
    for (const { of, units } of piece.stock) aboard.set(of, (aboard.get(of) ?? 0) + units);
  }
  return aboard;
}

/** How many times the stock aboard allows the job; Infinity when it uses up nothing. */
export function timesInStock(job: SceneJob, aboard: ReadonlyMap<string, number>): number {
  return Math.min(...job.uses.map(({ of, units }) => Math.floor((aboard.get(of) ?? 0) / units)), Infinity);
}

/**
 * Expected demand on each stock word (M5: "from every failure that might use it"), read like this. A trouble might use a
 * stock when one of its jobs that restores anything uses it. It then asks for it, on average, its expected events times the
 * best chance of those jobs with the best tools on the whole table, owned and for sale, ample stock granted: only repairs
 * that succeed use a part up, which is what makes the formula exact for a single user (demand Lambda p, not Lambda). The
 * figure belongs to the scene and not to the kit, so that the worth of a job does not hang on what else is carried; with
 * poorer tools less is asked for and the bound errs on the safe side.
 */
export function demands(scene: Scene, onTable: JobMarks): ReadonlyMap<string, number> {
  const jobs = new Map(scene.jobs.map((j) => [j.id, j]));
  const total = new Map<string, number>();
  for (const trouble of scene.trouble) {
    const mostByWord = new Map<string, number>();
    for (const job of jobsOf(trouble, jobs)) {
      if (job.uses.length === 0) continue;
      const p = toolChance(trouble, job, onTable);
      for (const { of } of job.uses) mostByWord.set(of, Math.max(mostByWord.get(of) ?? 0, p));
    }
    for (const [word, p] of mostByWord) total.set(word, (total.get(word) ?? 0) + trouble.expected * p);
  }
  return total;
}

/** p of M4 with ample stock: 0 when the job is out of reach or does not get the vehicle to help. */
export function toolChance(trouble: Trouble, job: SceneJob, marks: JobMarks): number {
  if (!reachesHelp(job, trouble.help)) return 0;
  const mark = marks.of(job);
  return mark === null ? 0 : trouble.restored * gradeFactor(mark) * job.chanceFactor;
}

/** Part of the job's worth lost to running out, several stocks added (M5). */
export function stockLoss(
  job: SceneJob,
  aboard: ReadonlyMap<string, number>,
  demand: ReadonlyMap<string, number>,
): number {
  const parts = job.uses.map(({ of, units }) =>
    kappa(Math.floor((aboard.get(of) ?? 0) / units), demand.get(of) ?? 0),
  );
  return Math.min(
    1,
    parts.reduce((sum, k) => sum + k, 0),
  );
}

export function jobsOf(trouble: Trouble, jobs: ReadonlyMap<string, SceneJob>): readonly SceneJob[] {
  return trouble.jobs.map((id) => {
    const job = jobs.get(id);
    if (job === undefined)
      throw new Error(`${trouble.id} names the job ${id}, which the scene does not have`);
    return job;
  });
}
