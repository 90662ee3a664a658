import type { Scene } from '@waymend/core/repairing/scene';

/** What a joint matters to a trip. */
export interface JointUse {
  /** Titles of jobs that turn it, most needed first. */
  readonly jobs: readonly string[];
  /** Expected stops on the trip that a job which turns it could end: expected events times the chance to restore. */
  readonly stops: number;
}

/** How much the jobs of a trip lean on each of its joints, by joint id; joints that no job turns are left out. */
export function jointUses(scene: Scene): ReadonlyMap<string, JointUse> {
  const byJob = new Map(scene.jobs.map((job) => [job.id, job]));
  const stops = new Map<string, number>();
  const jobs = new Map<string, Map<string, number>>();
  for (const { needs, title } of scene.jobs)
    for (const need of needs)
      if (need.kind === 'turn') {
        const titles = jobs.get(need.joint) ?? new Map<string, number>();
        titles.set(title, titles.get(title) ?? 0);
        jobs.set(need.joint, titles);
      }
  for (const { expected, restored, jobs: answers } of scene.trouble) {
    // A trouble that several jobs answer counts once for a joint, by the best of those that turn it.
    const best = new Map<string, number>();
    for (const id of answers) {
      const job = byJob.get(id);
      if (job === undefined) continue;
      const worth = expected * restored * job.chanceFactor;
      for (const need of job.needs) {
        if (need.kind !== 'turn') continue;
        best.set(need.joint, Math.max(best.get(need.joint) ?? 0, worth));
        const titles = jobs.get(need.joint);
        titles?.set(job.title, (titles.get(job.title) ?? 0) + worth);
      }
    }
    for (const [joint, worth] of best) stops.set(joint, (stops.get(joint) ?? 0) + worth);
  }
  return new Map(
    [...jobs].map(([joint, titles]) => [
      joint,
      {
        jobs: [...titles].sort(([, a], [, b]) => b - a).map(([title]) => title),
        stops: stops.get(joint) ?? 0,
      },
    ]),
  );
}
