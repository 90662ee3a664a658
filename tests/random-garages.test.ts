import { plan } from '@waymend/core/choosing/plan';
import type { Aim } from '@waymend/core/choosing/problem';
import { SCORE_UNIT } from '@waymend/core/choosing/problem';
import type { Scene } from '@waymend/core/repairing/scene';
import type { Garage } from '@waymend/garage/record/schema';
import type { Question } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import type { WeighedKit } from './support/every-kit.ts';
import { check, everyKit, isFeasible } from './support/every-kit.ts';
import { randomGarage, randomQuestion } from './support/random-garage.ts';
import { steady } from './support/steady.ts';
import { TINY_TRADE } from './support/tiny-trade.ts';

const solver = await createHighsSolver();

const GARAGES = 200;
const QUESTIONS = 10;
const MOST_CENTS = 2500;

/** What an aim looks at, first things first (M6); must-do does not look at the score. */
function rank({ kind }: Question['aim'], kit: Pick<WeighedKit, 'lossUnits' | 'grams' | 'pieces'>) {
  const { lossUnits, grams, pieces } = kit;
  if (kind === 'best-chance') return [lossUnits, grams, pieces];
  return kind === 'least-mass' ? [grams, lossUnits, pieces] : [grams, pieces];
}

function byRank(aim: Question['aim']) {
  return (a: WeighedKit, b: WeighedKit): number => {
    const other = rank(aim, b);
    for (const [n, value] of rank(aim, a).entries()) {
      const difference = value - (other[n] ?? 0);
      if (difference !== 0) return difference;
    }
    return 0;
  };
}

/** Greatest loss, in score units, that still leaves the chance asked for. */
function mostLoss(aim: Question['aim']): number {
  return aim.kind === 'least-mass'
    ? Math.floor(-Math.log(aim.chance) / SCORE_UNIT)
    : Number.POSITIVE_INFINITY;
}

/** The best of all kits that the checker accepts: the first in order of what the aim looks at. */
function bestKit(kits: readonly WeighedKit[], scene: Scene, aim: Question['aim']): WeighedKit | undefined {
  const { grams, millilitres, cents } = scene.limits;
  return kits
    .filter(
      (kit) =>
        kit.lossUnits <= mostLoss(aim) &&
        kit.grams <= (grams ?? Number.POSITIVE_INFINITY) &&
        kit.millilitres <= (millilitres ?? Number.POSITIVE_INFINITY) &&
        kit.cents <= cents,
    )
    .sort(byRank(aim))
    .find((kit) => isFeasible(check(scene, kit)));
}

function sceneOf(garage: Garage, question: Omit<Question, 'aim'>): Scene {
  const built = buildScene(garage, 't', TINY_TRADE, question);
  if (!built.ok) throw new Error(built.error.message);
  return built.value.scene;
}

/** The planner's loss, grams and pieces, or null when it says that there is no plan. */
function planned(garage: Garage, question: Question) {
  const prepared = prepare(garage, 't', TINY_TRADE, question);
  if (!prepared.ok) {
    expect(prepared.error.id).toMatch(/^must-do-/);
    return null;
  }
  const answer = solve(prepared.value, question, solver);
  if (answer.kind === 'no-plan') return null;
  if (answer.kind === 'refused') throw new Error(answer.refusal.message);
  const { outcome, choice } = answer.solved;
  expect(outcome.kind).toBe('proven');
  return { lossUnits: outcome.loss, grams: outcome.grams, pieces: choice.carried.length };
}

describe('small random garages', () => {
  const seen = { planned: 0, none: 0, bought: 0, boxed: 0, empty: 0 };

  it(`[M8] ${GARAGES * QUESTIONS} questions: the planner finds what trying every kit finds, to the score unit and the gram`, () => {
    fc.assert(
      fc.property(
        randomGarage(8, 3),
        fc.array(randomQuestion, { minLength: QUESTIONS, maxLength: QUESTIONS }),
        (garage, questions) => {
          const free = { limitGrams: null, limitMl: null, budgetCents: MOST_CENTS, mustDo: [] };
          const kits = everyKit(sceneOf(garage, free));
          for (const question of questions) {
            const best = bestKit(kits, sceneOf(garage, question), question.aim);
            const answer = planned(garage, question);
            expect(answer && rank(question.aim, answer)).toEqual(best ? rank(question.aim, best) : null);
            if (best === undefined) seen.none++;
            else seen.planned++;
            if ((best?.bought.length ?? 0) > 0) seen.bought++;
            if ((best?.bundles.length ?? 0) > 0) seen.boxed++;
            if (best?.carried.length === 0) seen.empty++;
          }
        },
      ),
      steady(GARAGES),
    );
  }, 900_000);

  afterAll(() => {
    // Cases that never buy, never carry a set or never fail would say little.
    expect(seen.planned).toBeGreaterThan(800);
    expect(seen.none).toBeGreaterThan(100);
    expect(seen.bought).toBeGreaterThan(50);
    expect(seen.boxed).toBeGreaterThan(20);
    expect(seen.planned - seen.empty).toBeGreaterThan(500);
  });
});

describe('medium random garages', () => {
  it('[M8] 200 problems: reduced first or taken as they are, the plan is the same', () => {
    fc.assert(
      fc.property(randomGarage(24, 8), randomQuestion, (garage, question) => {
        const prepared = prepare(garage, 't', TINY_TRADE, question);
        if (!prepared.ok) return;
        const { problem } = prepared.value.stated;
        const { aim } = question;
        const goal: Aim = aim.kind === 'least-mass' ? { kind: aim.kind, maxLoss: mostLoss(aim) } : aim;
        const reduced = plan(problem, goal, solver);
        const whole = plan(problem, goal, solver, { reduce: false });
        expect(reduced.kind).toBe(whole.kind);
        if (reduced.kind !== 'proven' || whole.kind !== 'proven') return;
        expect([reduced.grams, reduced.choice.carried.length]).toEqual([
          whole.grams,
          whole.choice.carried.length,
        ]);
        if (aim.kind !== 'must-do') expect(reduced.loss).toBe(whole.loss);
      }),
      steady(200, 2),
    );
  }, 900_000);
});
