import type { FunctionNeed, Scene } from '@waymend/core/repairing/scene';
import type { Bench } from './bench.ts';
import { layOut } from './bench.ts';
import { functionMark } from './functions.ts';
import type { JobMarks } from './jobs.ts';
import type { Violation } from './report.ts';
import { timesInStock } from './stock.ts';

/**
 * The floor (M7): what the plan leaves unmet although something owned or affordable gives it, and what nothing gives.
 * Affordable: its own price, or that of one set that holds it, is within the budget. Pieces pinned to stay home give nothing.
 */
export function floorDuties(
  scene: Scene,
  bench: Bench,
): { readonly violations: readonly Violation[]; readonly gaps: readonly string[] } {
  const price = new Map(scene.bundles.map((b) => [b.id, b.owned ? 0 : b.cents]));
  const affordable = layOut(
    scene.pieces.filter((p) => {
      if (p.pin === 'never') return false;
      const prices = [
        ...(p.cents === null ? [] : [p.cents]),
        ...p.bundles.flatMap((b) => price.get(b) ?? []),
      ];
      return p.owned || prices.some((cents) => cents <= scene.limits.cents);
    }),
  );
  const violations: Violation[] = [];
  const gaps: string[] = [];
  for (const need of scene.floor) {
    if (functionMark(bench, need, scene.together) !== null) continue;
    if (functionMark(affordable, need, scene.together) === null) {
      gaps.push(nameOf(need));
      continue;
    }
    const sentence = `The floor asks for "${nameOf(need)}", something at hand gives it, and the plan leaves it at home.`;
    violations.push({ id: 'floor-unmet', about: nameOf(need), sentence });
  }
  return { violations, gaps };
}

/** Jobs that must be possible, in every position that they have: tools, people, and stock for once. */
export function mustDoViolations(
  scene: Scene,
  marks: JobMarks,
  aboard: ReadonlyMap<string, number>,
): readonly Violation[] {
  return scene.mustDo.flatMap((id) => {
    const jobs = scene.jobs.filter((j) => j.job === id && !j.expedient);
    if (jobs.length === 0) {
      const sentence = `The job ${id} must be possible, and this vehicle does not have it.`;
      return [{ id: 'must-do-unmet' as const, about: id, sentence }];
    }
    return jobs.flatMap((job) => {
      if (marks.of(job) !== null && timesInStock(job, aboard) >= 1) return [];
      const sentence = `"${job.title}" must be possible, and is not.`;
      return [{ id: 'must-do-unmet' as const, about: job.id, sentence }];
    });
  });
}

function nameOf(need: FunctionNeed): string {
  return need.of === undefined ? need.fn : `${need.fn} ${need.of}`;
}
