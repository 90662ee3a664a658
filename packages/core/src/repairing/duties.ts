import type { NeedIndex } from '../choosing/problem.ts';
import type { Result } from '../result.ts';
import { ok, refuse } from '../result.ts';
import type { NeedWriter } from './need-writer.ts';
import type { FunctionNeed, Scene, ScenePiece } from './scene.ts';
import type { Stock } from './stock.ts';

export interface Floor {
  /** Needs that must be met, and what each is for. */
  readonly must: readonly { readonly need: NeedIndex; readonly floor: FunctionNeed }[];
  /** What nothing owned or affordable gives. */
  readonly unmet: readonly FunctionNeed[];
}

/** Safety and legal items (M7): a constraint when anything owned or affordable gives them, else the first of the gaps. */
export function floorOf(scene: Scene, writer: NeedWriter): Floor {
  const asked = scene.floor.map((floor) => ({ floor, need: writer.fn(floor, 'last-resort') }));
  const canCome = obtainable(scene);
  const met = writer.graph.metBy((piece) => canCome[piece] === true);
  const must = asked.flatMap(({ floor, need }) =>
    need !== null && met[need] === true ? [{ floor, need }] : [],
  );
  const kept = new Set(must.map((m) => m.floor));
  return { must, unmet: scene.floor.filter((floor) => !kept.has(floor)) };
}

/** Owned, or within the budget by its own price or by that of a set that holds it; never what is pinned to stay home. */
function obtainable(scene: Scene): readonly boolean[] {
  const prices = new Map(scene.bundles.map((bundle) => [bundle.id, bundle.owned ? 0 : bundle.cents]));
  const affordable = (cents: number | null | undefined) =>
    cents !== null && cents !== undefined && cents <= scene.limits.cents;
  const canCome = (piece: ScenePiece) =>
    piece.pin !== 'never' &&
    (piece.owned || affordable(piece.cents) || piece.bundles.some((id) => affordable(prices.get(id))));
  return scene.pieces.map(canCome);
}

/**
 * Needs of the jobs that must be possible, in every position they have: tools at any grade, and stock for once. A job that no
 * tool on the table makes possible is a need that cannot be met, so that the plan says which; one that the people aboard
 * cannot do is refused, because no kit would change it.
 */
export function mustDoNeeds(scene: Scene, writer: NeedWriter, stock: Stock): Result<readonly NeedIndex[]> {
  const needs: NeedIndex[] = [];
  for (const id of scene.mustDo) {
    const jobs = scene.jobs.filter((job) => job.job === id && !job.expedient);
    if (jobs.length === 0)
      return refuse('must-do-unknown', `The job ${id} must be possible, and this vehicle does not have it`, {
        path: 'mustDo',
      });
    for (const job of jobs) {
      if (job.bestSkill < job.skill)
        return refuse(
          'must-do-skill',
          `"${job.title}" must be possible, and asks for skill ${job.skill}; the best aboard is ${job.bestSkill}`,
          { path: 'mustDo' },
        );
      if (scene.crew.count < job.people)
        return refuse(
          'must-do-people',
          `"${job.title}" must be possible, and takes ${job.people} people; ${scene.crew.count} are aboard`,
          { path: 'mustDo' },
        );
      needs.push(writer.job(job, 'last-resort') ?? writer.graph.never(`tools for: ${job.title}`));
      for (const { of, units } of job.uses)
        needs.push(stock.need(writer.graph, of, units, 1) ?? writer.graph.never(`${of} for: ${job.title}`));
    }
  }
  return ok([...new Set(needs)]);
}
