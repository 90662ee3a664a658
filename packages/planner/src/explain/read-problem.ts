import { compile } from '@waymend/core/choosing/compile';
import type { BuiltProblem } from '@waymend/core/hedge/build-problem';
import type { Scene } from '@waymend/core/repairing/scene';
import type { OptionMeaning, Reading } from './reading.ts';

/** Puts the problem's numbers back into the trade's words. */
export function readProblem(scene: Scene, built: BuiltProblem): Reading {
  const jobs = new Map(scene.jobs.map((j) => [j.id, j]));
  const troubles = new Map(scene.trouble.map((t) => [t.id, t]));
  const options = built.events.flatMap((event) =>
    event.options.map((o): OptionMeaning => {
      const job = jobs.get(o.job);
      if (job === undefined) throw new Error(`An option stands for ${o.job}, which the scene does not have`);
      return { job, grade: o.grade, chance: o.chance };
    }),
  );
  return {
    scene,
    compiled: compile(built.problem),
    pieces: scene.pieces,
    indexOf: new Map(scene.pieces.map((p, i) => [p.id, i])),
    options,
    troubles: built.events.map(({ trouble }) => {
      const t = troubles.get(trouble);
      return t === undefined ? [] : [t];
    }),
    blocked: built.blocked,
    unmetFloor: built.unmetFloor,
  };
}
