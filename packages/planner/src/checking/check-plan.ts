import type { Scene, ScenePiece } from '@waymend/core/repairing/scene';
import { layOut } from './bench.ts';
import { floorDuties, mustDoViolations } from './duties.ts';
import { exactChance } from './exact-stock.ts';
import type { JobMarks } from './jobs.ts';
import { jobMarks } from './jobs.ts';
import { sums } from './limits.ts';
import type { TroubleFinding } from './losses.ts';
import { losses } from './losses.ts';
import type { CheckReport, Claims, Violation } from './report.ts';
import { demands, stockAboard, timesInStock } from './stock.ts';
import { lookUp, supplyViolations } from './supply.ts';

/**
 * The independent check of a plan (M8): fit, jobs, stock, chance, mass and every limit worked out again from the scene alone,
 * by searching the carried pieces directly. It knows neither the needs and ways of the choosing problem nor the solver, and
 * shares no rule with them (see ./marks.ts). A violation means that the plan, or one of the two readings of the model, is
 * wrong; such a plan is not shown.
 *
 * @param carried Ids of the pieces that come along.
 * @param bought Ids of the pieces bought singly.
 * @param bundles Ids of the bundles bought, or carried whole.
 * @param claims What the plan says of itself.
 */
export function checkPlan(
  scene: Scene,
  carried: readonly string[],
  bought: readonly string[],
  bundles: readonly string[],
  claims: Claims,
): CheckReport {
  const { found, violations: unknown } = lookUp(scene, { carried, bought, bundles });
  const bench = layOut(found.carried);
  const marks = jobMarks(scene, bench);
  const aboard = stockAboard(found.carried);
  const demand = demands(scene, jobMarks(scene, layOut(scene.pieces.filter(isOnTable))));
  const findings = losses(scene, marks, aboard, demand);
  const sum = sums(scene, found);
  const floor = floorDuties(scene, bench);
  const lossUnits = findings.reduce((total, f) => total + f.loss - f.gain, 0);
  const nepers = scene.trouble.reduce(
    (total, t, n) => total + t.expected * (1 - (findings[n]?.chance ?? 0)),
    0,
  );
  const violations = [
    ...unknown,
    ...supplyViolations(scene, found),
    ...sum.violations,
    ...floor.violations,
    ...mustDoViolations(scene, marks, aboard),
    ...claimViolations(scene, claims, sum.grams, lossUnits, findings, marks),
  ];
  return {
    ok: violations.length === 0,
    violations,
    floorGaps: floor.gaps,
    figures: {
      grams: sum.grams,
      millilitres: sum.millilitres,
      cents: sum.cents,
      lossUnits,
      lossUnitsBare: findings.reduce((total, f) => total + f.loss, 0),
      chance: Math.exp(-nepers),
      chanceExactStock: exactChance(scene, findings, aboard),
      limits: sum.limits,
      jobs: scene.jobs.map((j) => ({ id: j.id, grade: marks.of(j), times: timesInStock(j, aboard) })),
      trouble: findings.map((f) => ({
        id: f.trouble,
        loss: f.loss,
        gain: f.gain,
        job: f.job?.id ?? null,
        chance: f.chance,
      })),
    },
  };
}

/** Owned or for sale; a copy kept only to ask "what if it were charged" is neither. */
function isOnTable(piece: ScenePiece): boolean {
  return piece.owned || piece.cents !== null || piece.bundles.length > 0;
}

function claimViolations(
  scene: Scene,
  claims: Claims,
  grams: number,
  lossUnits: number,
  findings: readonly TroubleFinding[],
  marks: JobMarks,
): readonly Violation[] {
  const out: Violation[] = [];
  if (claims.grams !== grams) {
    const sentence = `The plan says ${claims.grams} g, its pieces and cases weigh ${grams} g.`;
    out.push({ id: 'mass-claim', about: 'mass', sentence, found: claims.grams, expected: grams });
  }
  // Only where a unit may honestly be rounded either way may the sums differ, and by no more than those units.
  const edge = findings.filter((f) => f.onTheEdge).length * 2;
  const claimed = claims.lossUnits;
  if (claimed !== undefined && Math.abs(claimed - lossUnits) > edge) {
    const id = claimed < lossUnits ? 'loss-understated' : 'loss-overstated';
    const sentence = `The plan says that ${claimed} score units stay lost, the check finds ${lossUnits}.`;
    out.push({ id, about: 'loss', sentence, found: claimed, expected: lossUnits });
  }
  for (const job of scene.jobs) {
    const claim = claims.bySceneJob?.[job.id];
    const mark = marks.of(job);
    if (claim === undefined || claim === mark) continue;
    const sentence = `The plan says "${job.title}" is ${claim ?? 'out of reach'}, the check finds it ${mark ?? 'out of reach'}.`;
    out.push({ id: 'job-claim', about: job.id, sentence });
  }
  return out;
}
