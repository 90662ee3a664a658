import { waysByGrade } from '@waymend/core/repairing/ways-of';
import type { ReadableWay } from '@waymend/core/repairing/ways-of';
import type { Grade, Scene, SceneJob, SceneNeed, ScenePiece } from '@waymend/core/repairing/scene';
import { worstOf } from '@waymend/core/repairing/grade';
import type { Bench } from '../checking/bench.ts';
import { layOut } from '../checking/bench.ts';
import { functionMark } from '../checking/functions.ts';
import type { JobMarks } from '../checking/jobs.ts';
import { jobMarks } from '../checking/jobs.ts';
import { jointMark } from '../checking/joints.ts';
import { stockAboard, timesInStock } from '../checking/stock.ts';
import type { BuiltScene } from '../scene/build-scene.ts';

/** Which pieces are here: all that are owned and ready, or those named, by piece id. */
export type Carried =
  | { readonly kind: 'everything' }
  | { readonly kind: 'pieces'; readonly ids: ReadonlySet<string> };

/** Ways looked at for each need; copies of the same piece make many that read alike. */
export const MOST_WAYS = 16;

/** What is here, as jobs see it. Everything the planner's rules say of it is asked of the independent checker as well (M8). */
export class Aboard {
  readonly scene: Scene;
  readonly pieces: readonly ScenePiece[];
  private readonly byId: ReadonlyMap<string, ScenePiece>;
  private readonly marks: JobMarks;
  private readonly stock: ReadonlyMap<string, number>;

  constructor({ scene }: Pick<BuiltScene, 'scene'>, carried: Carried) {
    this.pieces = scene.pieces
      .filter((p) => (carried.kind === 'everything' ? p.owned : carried.ids.has(p.id)))
      // What comes along has been paid for by the time it is wanted.
      .map((p) => ({ ...p, owned: true }));
    this.scene = { ...scene, pieces: this.pieces };
    this.byId = new Map(this.pieces.map((p) => [p.id, p]));
    this.marks = jobMarks(this.scene, layOut(this.pieces));
    this.stock = stockAboard(this.pieces);
  }

  piece(id: string): ScenePiece | undefined {
    return this.byId.get(id);
  }

  /** Units of a stock word. */
  units(of: string): number {
    return this.stock.get(of) ?? 0;
  }

  inStock(job: SceneJob): boolean {
    return timesInStock(job, this.stock) >= 1;
  }

  hasPeople(job: SceneJob): boolean {
    return this.scene.crew.count >= job.people && job.bestSkill >= job.skill;
  }

  /** Grade by tools and people, by the checker alone: for lists of many jobs. */
  gradeOf(job: SceneJob): Grade | null {
    return this.marks.of(job);
  }

  /** Ways to meet each need of a job, best first, each re-checked. */
  ways(job: SceneJob): readonly (readonly ReadableWay[])[] {
    const found = waysByGrade(this.scene, job.needs, MOST_WAYS);
    job.needs.forEach((need, n) => {
      const ways = found[n] ?? [];
      for (const way of ways) this.agree(need, way.pieces, way.grade);
      if (ways.length === 0) this.agree(need, null, null);
    });
    const grade = this.hasPeople(job) ? gradeOfWays(found) : null;
    if (grade !== this.marks.of(job))
      throw new Error(
        `${job.id}: the card finds ${grade ?? 'no way'}, the check ${this.marks.of(job) ?? 'none'}`,
      );
    return found;
  }

  /** Two readings of the model must find the same; where they do not, one is wrong and nothing is shown. */
  private agree(need: SceneNeed, ids: readonly string[] | null, grade: Grade | null): void {
    const pieces = ids === null ? this.pieces : ids.flatMap((id) => this.byId.get(id) ?? []);
    const found = this.mark(need, layOut(pieces));
    if (found !== grade)
      throw new Error(
        `${ids?.join(' + ') ?? 'all that is here'}: the card finds ${grade ?? 'no way'}, the check ${found ?? 'none'}`,
      );
  }

  private mark(need: SceneNeed, bench: Bench): Grade | null {
    if (need.kind === 'function') return functionMark(bench, need, this.scene.together);
    const joint = this.scene.joints.find((j) => j.id === need.joint);
    if (joint === undefined)
      throw new Error(`a job turns the joint ${need.joint}, which the scene does not have`);
    return jointMark(bench, joint, this.scene.crew);
  }
}

/** The worst grade of the best ways: what the job is done at. */
export function gradeOfWays(found: readonly (readonly ReadableWay[])[]): Grade | null {
  return worstOf(...found.map((ways) => ways[0]?.grade ?? null));
}
