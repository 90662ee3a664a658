import type { SimulatedKit, TripLaw } from '@waymend/core/simulating/trip-law';
import type { Scene, SceneJob } from '@waymend/core/repairing/scene';
import { layOut } from '../checking/bench.ts';
import { jobMarks } from '../checking/jobs.ts';
import { jobsOf, stockAboard, toolChance } from '../checking/stock.ts';

/** A kit ready to be walked, with the trade's words for what the numbers mean. */
export interface KitForWalk {
  readonly kit: SimulatedKit;
  /** By trouble and answer: the job that is done. */
  readonly jobs: readonly (readonly SceneJob[])[];
}

/** What may happen on the trip to any of these kits: by trouble the most that one of them brings about. */
export function lawOf(expected: readonly (readonly number[])[]): TripLaw {
  const [first = []] = expected;
  return { expected: first.map((_, t) => Math.max(...expected.map((of) => of[t] ?? 0))) };
}

/**
 * What these pieces can do about each trouble, worked out by the checker's rules and not by the choosing problem's.
 *
 * @param expected Expected immobilising events by trouble with this kit's mass aboard (M1).
 */
export function kitForWalk(
  scene: Scene,
  carried: ReadonlySet<string>,
  expected: readonly number[],
  law: TripLaw,
): KitForWalk {
  const pieces = scene.pieces.filter((p) => carried.has(p.id));
  const marks = jobMarks(scene, layOut(pieces));
  const aboard = stockAboard(pieces);
  const words = [...new Set(scene.jobs.flatMap((j) => j.uses.map((u) => u.of)))];
  const numberOf = new Map(words.map((word, n) => [word, n]));
  const jobs = new Map(scene.jobs.map((j) => [j.id, j]));
  const byTrouble = scene.trouble.map((trouble) =>
    jobsOf(trouble, jobs)
      .map((job) => ({ job, chance: toolChance(trouble, job, marks) }))
      .filter(({ chance }) => chance > 0)
      // Best first; of equals the one that uses nothing up.
      .sort((a, b) => b.chance - a.chance || a.job.uses.length - b.job.uses.length),
  );
  return {
    jobs: byTrouble.map((answers) => answers.map(({ job }) => job)),
    kit: {
      share: expected.map((e, t) => (e > 0 ? e / (law.expected[t] ?? e) : 0)),
      stock: words.map((word) => aboard.get(word) ?? 0),
      answers: byTrouble.map((answers) =>
        answers.map(({ job, chance }) => ({
          chance,
          uses: job.uses.map(({ of, units }) => ({ stock: numberOf.get(of) ?? 0, units })),
        })),
      ),
    },
  };
}
