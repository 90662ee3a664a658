import type { Scene } from '@waymend/core/repairing/scene';
import { USES_UNIT } from '@waymend/core/stowing/stow-rules';
import { kitForWalk, lawOf } from '../simulate/kit-for-walk.ts';
import { piecesByJob } from '../simulate/pieces-by-job.ts';

/** How often a trip takes each piece in hand, and which pieces only one job asks for. */
export interface Uses {
  /** By piece id, in USES_UNIT. */
  readonly often: ReadonlyMap<string, number>;
  /** By piece id: the job that alone asks for it. */
  readonly onlyFor: ReadonlyMap<string, string>;
}

/**
 * For each trouble the best repair this kit has takes its pieces in hand as often as the trouble is expected (M5). Pieces that
 * appear in the repairs of one job alone are that job's own.
 */
export function usesOf(scene: Scene, carried: ReadonlySet<string>): Uses {
  const expected = scene.trouble.map((trouble) => trouble.expected);
  const { jobs } = kitForWalk(scene, carried, expected, lawOf([expected]));
  const pieces = piecesByJob(scene, carried);
  const often = new Map<string, number>();
  const asking = new Map<string, Set<string>>();
  for (const [t, answers] of jobs.entries()) {
    const [best] = answers;
    if (best === undefined) continue;
    for (const id of pieces.get(best.id) ?? []) {
      often.set(id, (often.get(id) ?? 0) + (expected[t] ?? 0));
      asking.set(id, (asking.get(id) ?? new Set()).add(best.job));
    }
  }
  const onlyFor = new Map<string, string>();
  for (const [id, by] of asking) {
    const [only] = by;
    if (by.size === 1 && only !== undefined) onlyFor.set(id, only);
  }
  return {
    often: new Map([...often].map(([id, n]) => [id, Math.round(n / USES_UNIT)])),
    onlyFor,
  };
}
