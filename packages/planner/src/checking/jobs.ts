import type { Joint, Scene, SceneJob } from '@waymend/core/repairing/scene';
import type { Bench } from './bench.ts';
import { functionMark } from './functions.ts';
import { jointMark } from './joints.ts';
import type { Mark } from './marks.ts';
import { worst } from './marks.ts';

/** Grades of jobs with the pieces of one bench (M4), by tools alone: stock is looked at apart. */
export interface JobMarks {
  of(job: SceneJob): Mark;
}

/** Grades each job once, and each joint once for all jobs that turn it. */
export function jobMarks(scene: Scene, bench: Bench): JobMarks {
  const joints = new Map(scene.joints.map((j) => [j.id, j]));
  const turned = new Map<string, Mark>();
  const known = new Map<string, Mark>();
  const turn = (id: string): Mark => {
    const joint = joints.get(id);
    if (joint === undefined) throw new Error(`A job turns the joint ${id}, which the scene does not have`);
    return remember(turned, id, () => jointMark(bench, joint, scene.crew));
  };
  return {
    of: (job) =>
      remember(known, job.id, () => {
        if (scene.crew.count < job.people || job.bestSkill < job.skill) return null;
        return worst(
          ...job.needs.map((need) =>
            need.kind === 'turn' ? turn(need.joint) : functionMark(bench, need, scene.together),
          ),
        );
      }),
  };
}

/** Whether the result of a job may be trusted as far as help is (M4). Made safe is not restored. */
export function reachesHelp(job: SceneJob, help: number): boolean {
  return job.trusted > 0 && job.trusted >= help;
}

function remember(map: Map<string, Mark>, key: Joint['id'], work: () => Mark): Mark {
  const known = map.get(key);
  if (known !== undefined) return known;
  const mark = work();
  map.set(key, mark);
  return mark;
}
