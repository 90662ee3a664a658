import type { Solver } from '@waymend/core/choosing/solver-port';
import type { PlanProgress } from '@waymend/core/choosing/plan';
import type { Garage } from '@waymend/garage/record/schema';
import { chanceOfLoss } from '@waymend/planner/explain/reading';
import { why } from '@waymend/planner/explain/why';
import { answerOf } from '@waymend/planner/plan/answer';
import type { Prepared, Question, Solved, SolvedOrNot } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Errand } from '../answer.ts';
import type { Request } from '../protocol.ts';

/** Longest a proof may take before the best kit so far is shown with its gap. */
const PATIENCE_SECONDS = 60;

/** A plan that stands, so that a question about it, or the way back to it, does not plan it again. */
interface Kept {
  readonly key: string;
  readonly prepared: Prepared;
  readonly solved: Solved;
}

/** Plans kept, newest first: what undo goes back to, and the two sides of a comparison. */
const KEPT = 4;
let kept: readonly Kept[] = [];

/** The plan of this trip and question, if it is still at hand. */
export function keptPlan(garage: Garage, trip: string, question: Question): Kept | undefined {
  const key = keyOf(garage, trip, question);
  return kept.find((one) => one.key === key);
}

/** Plans a trip: a kit at once with its certified gap, then the proven one. `why` explains one thing of that plan. */
export function planning(request: Extract<Request, { kind: 'plan' | 'why' }>, errand: Errand): void {
  const { garage, trip, question } = request;
  const { say } = errand;
  const started = errand.clock();
  const key = keyOf(garage, trip, question);
  const known = keptPlan(garage, trip, question);
  if (known !== undefined && (request.kind === 'why' || known.solved.outcome.kind === 'proven')) {
    kept = [known, ...kept.filter((one) => one !== known)];
    if (request.kind === 'why') explain(known.prepared, known.solved, request, errand);
    else show(known.prepared, question, known.solved, started, errand, true);
    return;
  }
  const prepared = prepare(garage, trip, SHIPPED_TRADE, question);
  if (!prepared.ok) {
    say({ kind: 'refused', refusals: [prepared.error] }, true);
    return;
  }
  if (request.kind === 'plan' && question.aim.kind === 'best-chance') {
    const first = solved(prepared.value, question, errand, errand.solver, 0);
    if (first.kind === 'solved' && first.solved.outcome.kind === 'within')
      show(prepared.value, question, first.solved, started, errand, false);
    if (errand.stopAsked()) {
      say({ kind: 'stopped' }, true);
      return;
    }
  }
  const done = solved(prepared.value, question, errand, errand.solver, PATIENCE_SECONDS);
  switch (done.kind) {
    case 'no-plan':
      say({ kind: 'no-plan', sentences: done.sentences, clashes: done.clashes }, true);
      return;
    case 'refused':
      say(errand.stopAsked() ? { kind: 'stopped' } : { kind: 'refused', refusals: [done.refusal] }, true);
      return;
    case 'solved':
      // A proof that was stopped may be asked for again.
      kept = [
        { key, prepared: prepared.value, solved: done.solved },
        ...kept.filter((one) => one.key !== key),
      ].slice(0, KEPT);
      if (request.kind === 'why') explain(prepared.value, done.solved, request, errand);
      else show(prepared.value, question, done.solved, started, errand, true);
  }
}

function solved(
  prepared: Prepared,
  question: Question,
  { clock, stopAsked, say }: Errand,
  solver: Solver,
  timeLimit: number,
): SolvedOrNot {
  const onProgress = ({ grams, loss, bound }: PlanProgress): void =>
    say(
      {
        kind: 'proof',
        progress: {
          grams,
          unaided: loss === null ? null : chanceOfLoss(loss),
          atBest: question.aim.kind === 'best-chance' ? chanceOfLoss(bound) : 1,
        },
      },
      false,
    );
  return solve(prepared, question, solver, {
    timeLimit,
    clock,
    shouldStop: stopAsked,
    ...(timeLimit > 0 ? { onProgress } : {}),
  });
}

function show(
  prepared: Prepared,
  question: Question,
  done: Solved,
  started: number,
  { clock, say }: Errand,
  final: boolean,
): void {
  const answer = answerOf(prepared, question, done, SHIPPED_TRADE);
  if (answer.ok) say({ kind: 'plan', answer: answer.value, final, seconds: clock() - started }, final);
  else say({ kind: 'refused', refusals: [answer.error] }, true);
}

function explain(
  prepared: Prepared,
  done: Solved,
  { question, what }: Extract<Request, { kind: 'why' }>,
  { say }: Errand,
): void {
  const answer = answerOf(prepared, question, done, SHIPPED_TRADE);
  const told = answer.ok ? why(prepared, done, answer.value, SHIPPED_TRADE, what) : answer;
  say(told.ok ? { kind: 'why', why: told.value } : { kind: 'refused', refusals: [told.error] }, true);
}

/** The same garage and question have the same text: what the page sends is plain data. */
function keyOf(garage: Garage, trip: string, question: Question): string {
  return JSON.stringify([trip, question, garage]);
}
