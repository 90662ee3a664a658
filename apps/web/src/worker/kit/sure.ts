import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { sureOf } from '@waymend/planner/sureness/sure-trip';
import type { Errand } from '../answer.ts';
import { keptPlan } from './planning.ts';
import type { KitRequest } from './protocol.ts';

/** Always the same beliefs, so that the same plan always gets the same answer. */
const SEED = 1;

/** How sure the plan that is shown is (M11): dozens of other kits are looked for, so each step is said. */
export function sure(
  { garage, trip, question, draws, sizes }: Extract<KitRequest, { kind: 'kit/sure' }>,
  { solver, clock, stopAsked, say }: Errand,
): void {
  const plan = keptPlan(garage, trip, question);
  if (plan === undefined) {
    const message = 'The kit is not planned yet; wait for it, then ask again';
    say({ kind: 'refused', refusals: [{ id: 'plan-missing', message }] }, true);
    return;
  }
  const outcome = sureOf(plan.prepared, question, plan.solved, solver, SHIPPED_TRADE, {
    draws,
    sizes,
    seed: SEED,
    patience: { clock, shouldStop: stopAsked },
    onStep: (done, of) => say({ kind: 'kit/sure-step', done, of }, false),
  });
  if (!outcome.ok) say({ kind: 'refused', refusals: [outcome.error] }, true);
  else if (outcome.value.kind === 'stopped') say({ kind: 'stopped' }, true);
  else say({ kind: 'kit/sure', answer: outcome.value.answer }, true);
}
