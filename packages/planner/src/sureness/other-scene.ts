import { buildProblem } from '@waymend/core/repairing/build-problem';
import type { Scene } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import { readProblem } from '../explain/read-problem.ts';
import type { Prepared } from '../plan/plan-trip.ts';
import type { RateDraw } from './draws.ts';

/** The same question asked of a scene that differs. */
export function withScene(prepared: Prepared, scene: Scene): Result<Prepared> {
  const stated = buildProblem(scene);
  if (!stated.ok) return stated;
  return ok({
    built: { ...prepared.built, scene },
    stated: stated.value,
    reading: readProblem(stated.value),
  });
}

/** The scene with every failure so many times as frequent as its group is drawn. */
export function sceneUnder(scene: Scene, draw: RateDraw): Scene {
  return {
    ...scene,
    trouble: scene.trouble.map((t) => ({ ...t, expected: t.expected * (draw.get(t.group) ?? 1) })),
  };
}
