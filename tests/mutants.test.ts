import { plan } from '@waymend/core/choosing/plan';
import type { Problem } from '@waymend/core/choosing/problem';
import { buildProblem } from '@waymend/core/repairing/build-problem';
import { metres } from '@waymend/core/quantity/units';
import type { Scene, ToolOffer } from '@waymend/core/repairing/scene';
import { checkPlan } from '@waymend/planner/checking/check-plan';
import type { ViolationId } from '@waymend/planner/checking/report';
import { buildScene } from '@waymend/planner/scene/build-scene';
import type { Trade } from '@waymend/planner/trade';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomGarage } from './support/random-garage.ts';
import { steady } from './support/steady.ts';
import { TINY_TRADE } from './support/tiny-trade.ts';

/**
 * The checker on planners that are wrong on purpose. Each mutant reads one rule of docs/model.md falsely while it plans; its
 * answers then go through the check that every answer goes through, with the true scene. A check that lets a mutant pass in
 * all cases is no check of that rule.
 */
interface Mutant {
  readonly name: string;
  readonly scene?: (scene: Scene) => Scene;
  readonly problem?: (problem: Problem) => Problem;
  /** What it must be caught by, and by nothing else. */
  readonly caughtBy: readonly ViolationId[];
}

const solver = await createHighsSolver();

const offers = (scene: Scene, change: (offer: ToolOffer) => ToolOffer): Scene => ({
  ...scene,
  pieces: scene.pieces.map((p) => ({ ...p, offers: p.offers.map(change) })),
});

const MUTANTS: readonly Mutant[] = [
  {
    name: '[M3] one piece may turn and hold at the same moment',
    scene: (scene) => ({
      ...scene,
      joints: scene.joints.map(({ hold: _, ...joint }) => joint),
    }),
    caughtBy: ['loss-understated'],
  },
  {
    name: '[M2] a socket goes where there is no room above the head',
    scene: (scene) => ({
      ...scene,
      joints: scene.joints.map((joint) => (joint.access === 'side' ? { ...joint, access: 'open' } : joint)),
    }),
    // Where it carries no socket it still expects more use of the belts, and so says too much loss.
    caughtBy: ['loss-understated', 'loss-overstated'],
  },
  {
    name: '[M6] the mass limit is forgotten',
    problem: (problem) => ({ ...problem, limits: problem.limits.filter((row) => row.id !== 'mass') }),
    caughtBy: ['over-mass'],
  },
  {
    name: '[M13] what an axle may bear is forgotten',
    problem: (problem) => ({
      ...problem,
      limits: problem.limits.filter((row) => !row.id.startsWith('load')),
    }),
    caughtBy: ['over-load'],
  },
  {
    name: '[M5] stock never runs out',
    scene: (scene) => ({
      ...scene,
      pieces: scene.pieces.map((p) => ({ ...p, stock: p.stock.map((s) => ({ ...s, units: 1_000 })) })),
    }),
    caughtBy: ['loss-understated'],
  },
  {
    name: '[M2] a last resort counts as proper',
    scene: (scene) =>
      offers(scene, (o) => (o.kind === 'does' && o.grade === 'last-resort' ? { ...o, grade: 'proper' } : o)),
    caughtBy: ['loss-understated', 'floor-unmet'],
  },
  {
    name: '[M4] a limp counts however far help is',
    scene: (scene) => ({
      ...scene,
      trouble: scene.trouble.map((t) => ({ ...t, help: metres(0) })),
    }),
    caughtBy: ['loss-understated', 'loss-overstated'],
  },
  {
    name: '[M7] pins are not looked at',
    problem: (problem) => ({ ...problem, pieces: problem.pieces.map(({ pin: _, ...piece }) => piece) }),
    caughtBy: ['pinned-left-home', 'pinned-carried'],
  },
];

const CASES = 150;
/** Nobody has to lie under the vehicle, so that more of the jobs that turn and hold are within reach. */
const TRADE: Trade = {
  ...TINY_TRADE,
  jobs: TINY_TRADE.jobs.map(({ under: _, ...job }) => job),
};

/** In how many of the cases the check rejects the planner's answer, and what it says. */
function rejections({
  scene: wrongly = (s) => s,
  problem: corrupt = (p) => p,
}: Pick<Mutant, 'scene' | 'problem'>) {
  const said = new Set<ViolationId>();
  let rejected = 0;
  let answers = 0;
  const draw = fc.tuple(randomGarage(12, 6), fc.integer({ min: 15, max: 80 }));
  fc.assert(
    fc.property(draw, ([garage, hundreds]) => {
      const built = buildScene(garage, 't', TRADE, { limitGrams: hundreds * 100 });
      if (!built.ok) throw new Error(built.error.message);
      const { scene } = built.value;
      const stated = buildProblem(wrongly(scene));
      if (!stated.ok) throw new Error(stated.error.message);
      const outcome = plan(corrupt(stated.value.problem), { kind: 'best-chance' }, solver);
      if (outcome.kind !== 'proven') return;
      answers++;
      const ids = (list: readonly number[]) => list.map((p) => scene.pieces[p]?.id ?? '');
      const { carried, bought, bundles } = outcome.choice;
      const report = checkPlan(
        scene,
        ids(carried),
        ids(bought),
        bundles.map((b) => scene.bundles[b]?.id ?? ''),
        { lossUnits: outcome.loss, grams: outcome.grams },
      );
      if (!report.ok) rejected++;
      for (const v of report.violations) said.add(v.id);
    }),
    steady(CASES, 5),
  );
  return { rejected, answers, said: [...said].sort() };
}

describe('wrong planners', () => {
  it('[M8] the right one passes the check in every case', () => {
    const { rejected, answers, said } = rejections({});
    expect(answers).toBeGreaterThan(CASES / 2);
    expect({ rejected, said }).toEqual({ rejected: 0, said: [] });
  });

  for (const { name, caughtBy, ...mutant } of MUTANTS) {
    it(`${name}: the check rejects it`, () => {
      const { rejected, said } = rejections(mutant);
      expect(rejected).toBeGreaterThanOrEqual(1);
      for (const id of said) expect(caughtBy).toContain(id);
    });
  }
});
