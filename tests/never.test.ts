import type { Garage } from '@waymend/garage/record/schema';
import type { Question } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Trade } from '@waymend/planner/trade';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { broken } from './support/limits-kept.ts';
import { reaches, whyNot } from './support/must-hold.ts';
import { randomGarage, randomQuestion } from './support/random-garage.ts';
import { steady } from './support/steady.ts';
import { TINY_TRADE } from './support/tiny-trade.ts';
import { garageOf, owned } from './support/yaml-garage.ts';

/** What no plan may ever do, looked for in many plans. `solve` itself throws on what the checker rejects. */

const solver = await createHighsSolver();

interface Seen {
  plans: number;
  counted: number;
}

/** Asks, and holds everything the plan counts on against conditions that must be true of it. */
function holdsWater(garage: Garage, trip: string, trade: Trade, question: Question, seen: Seen): void {
  const prepared = prepare(garage, trip, trade, question);
  if (!prepared.ok) return;
  const result = solve(prepared.value, question, solver);
  if (result.kind !== 'solved') return;
  const { state, choice, outcome } = result.solved;
  const { scene } = prepared.value.built;
  const { options, compiled, troubles } = prepared.value.reading;
  const pieces = (list: readonly number[]) => list.flatMap((p) => scene.pieces[p] ?? []);
  const carried = pieces(choice.carried);
  seen.plans++;

  expect(
    broken(garage, scene, question, {
      carried,
      bought: pieces(choice.bought),
      bundles: choice.bundles.map((b) => scene.bundles[b]?.id ?? ''),
    }),
  ).toEqual([]);

  let loss = 0;
  troubles.forEach((merged, event) => {
    const [from = 0, to = 0] = [compiled.eventStart[event], compiled.eventStart[event + 1]];
    for (let o = from; o < to; o++) {
      const option = options[o];
      if (option === undefined || !state.optionComplete(o)) continue;
      seen.counted++;
      expect(whyNot(scene, option.job, carried)).toBeNull();
      for (const trouble of merged) expect(reaches(option.job, trouble)).toBe(true);
      expect(option.chance).toBeLessThanOrEqual(Math.max(...merged.map((t) => t.restored)) + 1e-12);
    }
    // No repair takes away more than there is.
    const event_ = compiled.problem.events[event];
    expect(state.gainOf(event)).toBeLessThanOrEqual(event_?.loss ?? 0);
    loss += (event_?.loss ?? 0) - state.gainOf(event);
  });
  if (question.aim.kind !== 'must-do') expect(outcome.loss).toBe(loss + compiled.problem.fixedLoss);
}

describe('never', () => {
  it('[M6] a limit broken, a forbidden way, or one piece counted twice at the same moment: 400 random garages', () => {
    const seen = { plans: 0, counted: 0 };
    fc.assert(
      fc.property(randomGarage(16, 5), randomQuestion, (garage, question) => {
        holdsWater(garage, 't', TINY_TRADE, question, seen);
      }),
      steady(400, 3),
    );
    expect(seen.plans).toBeGreaterThan(150);
    expect(seen.counted).toBeGreaterThan(200);
  }, 900_000);

  it('[M2] the same with the shipped trade and a hundred things out of its list', () => {
    const seen = { plans: 0, counted: 0 };
    const ids = SHIPPED_TRADE.belongings.map((b) => b.id);
    const draw = fc.record({
      things: fc.shuffledSubarray(ids, { minLength: 100, maxLength: 100 }),
      limitGrams: fc.integer({ min: 10, max: 50 }).map((kg) => kg * 1000),
      rusty: fc.boolean(),
      helpKm: fc.constantFrom(30, 200, 500),
      skill: fc.integer({ min: 2, max: 5 }),
    });
    fc.assert(
      fc.property(draw, ({ things, limitGrams, rusty, helpKm, skill }) => {
        const garage = garageOf({
          belongings: things.map((id) => owned(id)),
          vehicle: { rusty: String(rusty) },
          people: [`a: { name: A, skill: ${skill}, berth: seats }`, 'b: { name: B, skill: 1, berth: seats }'],
          legs: [`l1: { trip: trip, order: 1, km: 900, surface: corrugated, helpKm: ${helpKm} }`],
        });
        holdsWater(garage, 'trip', SHIPPED_TRADE, { aim: { kind: 'best-chance' }, limitGrams }, seen);
      }),
      steady(12, 4),
    );
    expect(seen.plans).toBeGreaterThan(8);
    expect(seen.counted).toBeGreaterThan(500);
  }, 900_000);
});
