import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { answerOf } from '@waymend/planner/plan/answer';
import type { Prepared, Solved } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Solver } from '@waymend/core/choosing/solver-port';
import type { Garage } from '@waymend/garage/record/schema';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import type { Asked } from '../text/ask.ts';
import { asked } from '../text/ask.ts';
import { paragraph } from '../text/layout.ts';
import { progressOn } from '../text/progress.ts';
import { garageAt, refuse } from './garage-at.ts';

/** A planned trip, ready to be shown one way or another. */
export interface Planned {
  readonly garage: Garage;
  readonly asked: Asked;
  readonly prepared: Prepared;
  readonly solved: Solved;
  readonly answer: PlanAnswer;
  /** Warm, for what is asked of the plan next. */
  readonly solver: Solver;
}

export type PlannedOrCode =
  | { readonly kind: 'planned'; readonly planned: Planned }
  | { readonly kind: 'code'; readonly code: ExitCode };

/** Reads, plans and explains; every refusal has been printed when a code comes back. */
export async function planned(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<PlannedOrCode> {
  const garage = await garageAt(io, path);
  if (garage === null) return code(EXIT.refused);
  const question = asked(garage, options);
  if (!question.ok) {
    refuse(io, [question.error]);
    return code(EXIT.refused);
  }
  const made = prepare(garage, question.value.tripId, SHIPPED_TRADE, question.value.question);
  if (!made.ok) {
    refuse(io, [made.error]);
    return code(EXIT.refused);
  }
  const solver = await createHighsSolver();
  const progress = progressOn(io);
  const outcome = solve(made.value, question.value.question, solver, {
    ...(question.value.seconds === null ? {} : { timeLimit: question.value.seconds }),
    clock: () => io.clock() / 1000,
    shouldStop: io.stopAsked,
    onProgress: progress.show,
  });
  progress.end();
  switch (outcome.kind) {
    case 'refused':
      refuse(io, [outcome.refusal]);
      return code(EXIT.refused);
    case 'no-plan':
      return code(noPlan(io, question.value.json, outcome.sentences));
    case 'solved': {
      const answer = answerOf(made.value, question.value.question, outcome.solved, SHIPPED_TRADE);
      if (!answer.ok) {
        refuse(io, [answer.error]);
        return code(EXIT.refused);
      }
      return {
        kind: 'planned',
        planned: {
          garage,
          asked: question.value,
          prepared: made.value,
          solved: outcome.solved,
          answer: answer.value,
          solver,
        },
      };
    }
  }
}

/** Says which limits clash and by how much each would have to give. */
export function noPlan(io: Io, json: boolean, clashes: readonly string[]): ExitCode {
  if (json) io.out(`${JSON.stringify({ schema: 'waymend.no-plan/1', clashes }, null, 2)}\n`);
  const lines = ['No kit satisfies these limits.', ...clashes].flatMap((s) => paragraph(s, 0, 2));
  io.err(`${lines.join('\n')}\n`);
  return EXIT.noPlan;
}

function code(value: ExitCode): PlannedOrCode {
  return { kind: 'code', code: value };
}
