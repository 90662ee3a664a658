import type { FrontierPoint } from '@waymend/core/choosing/frontier';
import { frontier } from '@waymend/core/choosing/frontier';
import { KitState } from '@waymend/core/choosing/kit-state';
import { atRealMass } from '@waymend/planner/explain/at-real-mass';
import { casesCarried, gramsOf } from '@waymend/planner/explain/cases';
import { chanceOfLoss } from '@waymend/planner/explain/reading';
import type { Prepared } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Errand } from '../answer.ts';
import type { CurvePoint, Request } from '../protocol.ts';

/**
 * The curve "mass against chance" of a trip, each point said as it is found (M9). Kits are compared with the rates of the
 * trip's own limit, as its plan is, and each is shown with the rates of the mass it really carries, as the plan is: the
 * point at the kit's mass says what the headline says. The vehicle's own limits stay; only the one on mass is lifted.
 */
export function curve(
  { garage, trip, question, points }: Extract<Request, { kind: 'curve' }>,
  { solver, clock, stopAsked, say }: Errand,
): void {
  const prepared = prepare(garage, trip, SHIPPED_TRADE, question);
  if (!prepared.ok) {
    say({ kind: 'refused', refusals: [prepared.error] }, true);
    return;
  }
  const { problem } = prepared.value.stated;
  const free = { ...problem, limits: problem.limits.filter(({ id }) => id !== 'mass') };
  const state = new KitState(prepared.value.reading.compiled);
  const shown = (point: FrontierPoint): CurvePoint => pointOf(point, prepared.value, state);
  const drawn = frontier(free, solver, {
    points,
    clock,
    shouldStop: stopAsked,
    onPoint: (point) => say({ kind: 'curve-point', point: shown(point) }, false),
  });
  switch (drawn.kind) {
    case 'failed':
      say({ kind: 'broken', cause: drawn.cause }, true);
      return;
    case 'no-plan': {
      const outcome = solve(prepared.value, { ...question, aim: { kind: 'best-chance' } }, solver, { clock });
      const none = outcome.kind === 'no-plan' ? outcome : { sentences: [], clashes: [] };
      say({ kind: 'no-plan', sentences: none.sentences, clashes: none.clashes }, true);
      return;
    }
    case 'frontier':
      say(
        {
          kind: 'curve',
          points: drawn.points.map(shown).sort((a, b) => a.grams - b.grams),
          complete: drawn.complete,
          stopped: drawn.stoppedBy !== undefined,
        },
        true,
      );
  }
}

function pointOf(
  { choice, grams, pieces, loss, bound, proven }: FrontierPoint,
  { reading, built }: Prepared,
  state: KitState,
): CurvePoint {
  const carried = new Uint8Array(reading.pieces.length);
  for (const p of choice.carried) carried[p] = 1;
  state.become(carried);
  const real = atRealMass(
    reading,
    state,
    built,
    SHIPPED_TRADE,
    gramsOf(casesCarried(built.scene, choice.bundles)),
  );
  const gap = loss > 0 ? Math.min(1, Math.max(0, (loss - bound) / loss)) : 0;
  const belongings = [...new Set(choice.carried.flatMap((p) => reading.pieces[p]?.belonging ?? []))];
  return { grams, pieces, belongings, unaided: real.ok ? real.value : chanceOfLoss(loss), proven, gap };
}
