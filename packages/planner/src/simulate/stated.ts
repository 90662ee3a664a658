import type { Scene } from '@waymend/core/repairing/scene';
import { layOut } from '../checking/bench.ts';
import { exactChance } from '../checking/exact-stock.ts';
import { jobMarks } from '../checking/jobs.ts';
import { losses } from '../checking/losses.ts';
import { demands, stockAboard } from '../checking/stock.ts';

/**
 * The chance that M5 states for these pieces, and the same with shared stock counted out exactly, at the rates of the mass
 * really carried: what a job can do does not depend on mass, how often it is needed does.
 *
 * @param expected Expected immobilising events by trouble with this kit's mass aboard.
 */
export function statedChance(
  scene: Scene,
  carried: ReadonlySet<string>,
  expected: readonly number[],
): { readonly bound: number; readonly exact: number } {
  const pieces = scene.pieces.filter((p) => carried.has(p.id));
  const onTable = scene.pieces.filter((p) => p.owned || p.cents !== null || p.bundles.length > 0);
  const marks = jobMarks(scene, layOut(pieces));
  const aboard = stockAboard(pieces);
  const findings = losses(scene, marks, aboard, demands(scene, jobMarks(scene, layOut(onTable))));
  const nepers = expected.reduce((sum, e, t) => sum + e * (1 - (findings[t]?.chance ?? 0)), 0);
  const now: Scene = {
    ...scene,
    trouble: scene.trouble.map((t, n) => ({ ...t, expected: expected[n] ?? t.expected })),
  };
  return { bound: Math.exp(-nepers), exact: exactChance(now, findings, aboard) };
}
