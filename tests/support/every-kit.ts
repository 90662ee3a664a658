import type { Scene } from '@waymend/core/repairing/scene';
import { checkPlan } from '@waymend/planner/checking/check-plan';
import type { CheckReport, ViolationId } from '@waymend/planner/checking/report';

/** A kit and how it was come by. */
export interface Kit {
  readonly carried: readonly string[];
  readonly bought: readonly string[];
  readonly bundles: readonly string[];
}

/** A kit with what the checker makes of it. */
export interface WeighedKit extends Kit {
  readonly pieces: number;
  readonly grams: number;
  readonly millilitres: number;
  readonly cents: number;
  readonly lossUnits: number;
}

/** What a question may change, so that it is no reason yet to pass a kit over. */
const MAY_CHANGE: ReadonlySet<ViolationId> = new Set(['floor-unmet']);

/**
 * Every kit that the checker might accept under some limit of mass, volume or money: each subset of the pieces, with each
 * subset of the sets. `scene` is asked about with no such limits and the most money anybody has; kits that are wrong even so
 * (a torn set, a pin ignored, a berth or an axle over its limit) are left out. What is carried, not owned and in no chosen set
 * is bought singly.
 */
export function everyKit(scene: Scene): readonly WeighedKit[] {
  const pieces = scene.pieces.filter(
    (p) =>
      p.pin !== 'never' &&
      (p.owned || p.bundles.length > 0 || (p.cents !== null && p.cents <= scene.limits.cents)),
  );
  if (pieces.length + scene.bundles.length > 16) throw new Error('too many pieces to try every kit');
  const out: WeighedKit[] = [];
  for (let sets = 0; sets < 1 << scene.bundles.length; sets++) {
    const bundles = scene.bundles.filter((_, b) => (sets >> b) & 1).map((b) => b.id);
    for (let some = 0; some < 1 << pieces.length; some++) {
      const carried = pieces.filter((_, p) => (some >> p) & 1);
      const bought = carried.filter((p) => !p.owned && !p.bundles.some((b) => bundles.includes(b)));
      const kit = { carried: carried.map((p) => p.id), bought: bought.map((p) => p.id), bundles };
      const report = check(scene, kit);
      if (!keepsLimits(report) || report.violations.some((v) => !MAY_CHANGE.has(v.id))) continue;
      const { grams, millilitres, cents, lossUnits } = report.figures;
      out.push({ ...kit, pieces: carried.length, grams, millilitres, cents, lossUnits });
    }
  }
  return out;
}

/** The checker's report on a kit; nothing is claimed but the mass, which is the checker's own. */
export function check(scene: Scene, kit: Kit): CheckReport {
  const cases = scene.bundles.filter((b) => b.carry === 'whole' && kit.bundles.includes(b.id));
  const grams =
    scene.pieces.reduce((sum, p) => sum + (kit.carried.includes(p.id) ? p.grams : 0), 0) +
    cases.reduce((sum, b) => sum + b.caseGrams, 0);
  return checkPlan(scene, kit.carried, kit.bought, kit.bundles, { grams });
}

/** Nothing wrong, and every limit kept to the gram. */
export function isFeasible(report: CheckReport): boolean {
  return report.ok && keepsLimits(report);
}

function keepsLimits({ figures }: CheckReport): boolean {
  return figures.limits.every((row) => row.limit === null || row.used <= row.limit);
}
