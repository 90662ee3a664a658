import type { FrontierPoint } from '@waymend/core/choosing/frontier';
import { frontier } from '@waymend/core/choosing/frontier';
import { chanceOfLoss } from '@waymend/planner/explain/reading';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Errand } from '../answer.ts';
import type { CurvePoint, Request } from '../protocol.ts';

/** The curve "mass against chance" of a trip, each point said as it is found (M9). */
export function curve(
  { garage, trip, question, points }: Extract<Request, { kind: 'curve' }>,
  { solver, clock, stopAsked, say }: Errand,
): void {
  const prepared = prepare(garage, trip, SHIPPED_TRADE, question);
  if (!prepared.ok) {
    say({ kind: 'refused', refusals: [prepared.error] }, true);
    return;
  }
  const drawn = frontier(prepared.value.stated.problem, solver, {
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
      say({ kind: 'no-plan', sentences: outcome.kind === 'no-plan' ? outcome.sentences : [] }, true);
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

function shown({ grams, pieces, loss, bound, proven }: FrontierPoint): CurvePoint {
  const gap = loss > 0 ? Math.min(1, Math.max(0, (loss - bound) / loss)) : 0;
  return { grams, pieces, unaided: chanceOfLoss(loss), proven, gap };
}
