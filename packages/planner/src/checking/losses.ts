import { SCORE_UNIT } from '@waymend/core/choosing/problem';
import type { Scene, SceneJob } from '@waymend/core/repairing/scene';
import type { JobMarks } from './jobs.ts';
import { jobsOf, stockLoss, toolChance } from './stock.ts';

/** What is left of one trouble with a kit. */
export interface TroubleFinding {
  readonly trouble: string;
  /** Whole score units: if nothing can be done, and what the best job takes off. */
  readonly loss: number;
  readonly gain: number;
  /** The job that takes most off, null when none takes anything off. */
  readonly job: SceneJob | null;
  /** Its p of M4 with ample stock, and with the stock aboard (M5). */
  readonly toolChance: number;
  readonly chance: number;
  /** Whether a rounding to whole score units was so near a half that it may honestly fall either way. */
  readonly onTheEdge: boolean;
}

/** Loss and best gain of every trouble (M5), in the score units of the choosing problem. */
export function losses(
  scene: Scene,
  marks: JobMarks,
  aboard: ReadonlyMap<string, number>,
  demand: ReadonlyMap<string, number>,
): readonly TroubleFinding[] {
  const jobs = new Map(scene.jobs.map((j) => [j.id, j]));
  return scene.trouble.map((trouble) => {
    const loss = inUnits(trouble.expected);
    let found: TroubleFinding = {
      trouble: trouble.id,
      loss: loss.units,
      gain: 0,
      job: null,
      toolChance: 0,
      chance: 0,
      onTheEdge: loss.onTheEdge,
    };
    for (const job of jobsOf(trouble, jobs)) {
      const p = toolChance(trouble, job, marks);
      const chance = p * (1 - stockLoss(job, aboard, demand));
      if (!(chance > found.chance)) continue;
      const gain = inUnits(trouble.expected * chance);
      found = {
        ...found,
        job,
        toolChance: p,
        chance,
        gain: gain.units,
        onTheEdge: loss.onTheEdge || gain.onTheEdge,
      };
    }
    return found;
  });
}

/** Two sums in another order may differ by this much of a unit. */
const EDGE = 1e-5;

function inUnits(nepers: number): { readonly units: number; readonly onTheEdge: boolean } {
  const exact = nepers / SCORE_UNIT;
  const units = Math.round(exact);
  if (!Number.isSafeInteger(units))
    throw new Error(`${nepers} nepers cannot be counted in whole score units`);
  return { units, onTheEdge: Math.abs(exact - Math.floor(exact) - 0.5) < EDGE };
}
