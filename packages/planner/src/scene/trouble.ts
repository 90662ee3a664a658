import type { ReachRate } from '@waymend/core/failing/rate-result';
import type { SceneJob, Trouble } from '@waymend/core/repairing/scene';
import type { Failure } from '@waymend/catalogue/shape/failure';

/**
 * What may happen, where on the vehicle and how far from help: each failure's stopping events, split evenly among the
 * positions its first positioned job has (M4) and by distance class (M1).
 */
export function troubleOf(
  rates: readonly ReachRate[],
  failures: ReadonlyMap<string, Failure>,
  facts: ReadonlyMap<string, { readonly restored: number; readonly title: string; readonly group: string }>,
  jobs: readonly SceneJob[],
): readonly Trouble[] {
  const byJob = new Map<string, SceneJob[]>();
  for (const job of jobs) byJob.set(job.job, [...(byJob.get(job.job) ?? []), job]);
  const out: Trouble[] = [];
  for (const rate of rates) {
    const failure = failures.get(rate.failure);
    const fact = facts.get(rate.failure);
    if (failure === undefined || fact === undefined || !(rate.immobilising > 0)) continue;
    const candidates = failure.jobs.flatMap((id) => byJob.get(id) ?? []);
    const positions = positionsOf(failure.jobs, byJob);
    for (const position of positions) {
      const at = position === null ? '' : `@${position}`;
      const here = candidates.filter(
        (j) => position === null || j.position === undefined || j.position === position,
      );
      out.push({
        id: `${rate.failure}${at}~${rate.reach}`,
        failure: rate.failure,
        title: position === null ? fact.title : `${fact.title}, ${position}`,
        group: fact.group,
        expected: rate.immobilising / positions.length,
        restored: fact.restored,
        help: rate.help,
        jobs: here.map((j) => j.id),
      });
    }
  }
  return out;
}

function positionsOf(
  jobs: readonly string[],
  byJob: ReadonlyMap<string, readonly SceneJob[]>,
): readonly (string | null)[] {
  for (const id of jobs) {
    const positions = [
      ...new Set((byJob.get(id) ?? []).flatMap((j) => (j.position === undefined ? [] : [j.position]))),
    ];
    if (positions.length > 0) return positions.sort();
  }
  return [null];
}
