import type { Job } from '@waymend/catalogue/shape/job';
import type { Scene, SceneJob } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Trade } from '../trade.ts';

export interface FoundJob {
  readonly job: SceneJob;
  readonly record: Job;
}

/** The job that an id ('SS-04@front', 'BR-03', an expedient's) or words of a title name on this vehicle. */
export function findJob(scene: Scene, trade: Pick<Trade, 'jobs'>, what: string): Result<FoundJob> {
  const plain = what.trim().toLowerCase();
  const shown = what.trim().slice(0, 60);
  const proper = scene.jobs.filter((job) => !job.expedient);
  const found =
    first(proper.filter((job) => job.id.toLowerCase() === plain)) ??
    first(proper.filter((job) => job.job.toLowerCase() === plain)) ??
    // An expedient stands on the card of the job it stands in for.
    first(
      scene.jobs
        .filter((job) => job.expedient && job.id.toLowerCase() === plain)
        .flatMap((e) => sameAs(e, proper)),
    ) ??
    first(proper.filter((job) => job.title.toLowerCase() === plain)) ??
    (plain.length < 3 ? [] : proper.filter((job) => job.title.toLowerCase().includes(plain)));
  const [one] = found;
  const record = trade.jobs.find((j) => j.id === one?.job);
  if (one === undefined || record === undefined) {
    const known = trade.jobs.find((j) => j.id.toLowerCase() === plain.replace(/@.*$/, ''));
    return known === undefined
      ? refuse(
          'card-unknown',
          `There is no job "${shown}"; waymend tables jobs lists them, and --symptom starts from what you notice`,
        )
      : refuse(
          'card-not-here',
          `${known.id} (${known.title}) does not apply to this vehicle: it has nothing of that kind`,
        );
  }
  if (found.length > 1) {
    const some = found.slice(0, 8).map((job) => `${job.id} (${job.title})`);
    return refuse(
      'card-unclear',
      `"${shown}" could be ${some.join(', ')}${found.length > 8 ? ' and more' : ''}; give one id`,
    );
  }
  return ok({ job: one, record });
}

/** The list, or undefined when it is empty, so that the next rule is tried. */
function first(found: readonly SceneJob[]): readonly SceneJob[] | undefined {
  return found.length === 0 ? undefined : found;
}

function sameAs(expedient: SceneJob, proper: readonly SceneJob[]): readonly SceneJob[] {
  return proper.filter((job) => job.job === expedient.job && job.position === expedient.position);
}
