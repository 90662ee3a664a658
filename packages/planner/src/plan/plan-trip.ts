import { KitState } from '@waymend/core/choosing/kit-state';
import type { PlanProgress } from '@waymend/core/choosing/plan';
import { plan } from '@waymend/core/choosing/plan';
import type { Aim, Choice, Outcome } from '@waymend/core/choosing/problem';
import { SCORE_UNIT } from '@waymend/core/choosing/problem';
import type { Solver } from '@waymend/core/choosing/solver-port';
import type { BuiltProblem } from '@waymend/core/repairing/build-problem';
import { buildProblem } from '@waymend/core/repairing/build-problem';
import type { Refusal, Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { checkPlan } from '../checking/check-plan.ts';
import type { CheckReport } from '../checking/report.ts';
import { readProblem } from '../explain/read-problem.ts';
import type { Reading } from '../explain/reading.ts';
import type { Ask, BuiltScene } from '../scene/build-scene.ts';
import { buildScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import { clashSentences } from './clash-sentences.ts';

/** A question about one trip. */
export interface Question extends Ask {
  readonly aim:
    | { readonly kind: 'best-chance' }
    /** Least mass that drives home unaided with at least this chance, 0..1. */
    | { readonly kind: 'least-mass'; readonly chance: number }
    | { readonly kind: 'must-do' };
}

/** How long to think, and who may interrupt; the clock counts seconds. */
export interface Patience {
  readonly timeLimit?: number;
  readonly clock?: () => number;
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (progress: PlanProgress) => void;
}

/** Everything ready to be solved for one trip: built once, asked many things. */
export interface Prepared {
  readonly built: BuiltScene;
  readonly stated: BuiltProblem;
  readonly reading: Reading;
}

/** A solved and re-checked choice. */
export interface Solved {
  readonly outcome: Extract<Outcome, { kind: 'proven' | 'within' }>;
  readonly choice: Choice;
  readonly state: KitState;
  readonly report: CheckReport;
}

export type SolvedOrNot =
  | { readonly kind: 'solved'; readonly solved: Solved }
  /** `clashes`: what could give way, in the units of the limits (grams, millilitres, cents). */
  | {
      readonly kind: 'no-plan';
      readonly sentences: readonly string[];
      readonly clashes: Extract<Outcome, { kind: 'no-plan' }>['clashes'];
    }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

export function prepare(garage: Garage, tripId: string, trade: Trade, ask: Ask = {}): Result<Prepared> {
  const built = buildScene(garage, tripId, trade, ask);
  if (!built.ok) return built;
  const stated = buildProblem(built.value.scene);
  if (!stated.ok) return stated;
  return ok({ built: built.value, stated: stated.value, reading: readProblem(stated.value) });
}

/** Solves and has the independent checker recompute the answer (M8). An answer it rejects is a bug: it throws. */
export function solve(
  prepared: Prepared,
  question: Question,
  solver: Solver,
  patience: Patience = {},
): SolvedOrNot {
  const { stated, reading } = prepared;
  const outcome = plan(stated.problem, aimOf(question), solver, patience);
  switch (outcome.kind) {
    case 'no-plan':
      return {
        kind: 'no-plan',
        sentences: clashSentences({ ...prepared, chance: chanceOf(question) }, outcome),
        clashes: outcome.clashes,
      };
    case 'failed':
      return {
        kind: 'refused',
        refusal: {
          id: 'solver-failed',
          message: `The solver gave up: ${outcome.cause}. Try again, or with a longer time limit.`,
        },
      };
    case 'proven':
    case 'within': {
      const state = new KitState(reading.compiled);
      for (const p of outcome.choice.carried) state.carry(p);
      // A must-do search does not look at the score and leaves out what only the score asks for: count it with the whole problem.
      const whole = question.aim.kind === 'must-do' ? { ...outcome, loss: state.loss } : outcome;
      const report = recheck(prepared, outcome.choice, whole);
      return { kind: 'solved', solved: { outcome: whole, choice: outcome.choice, state, report } };
    }
  }
}

function chanceOf({ aim }: Question): number | null {
  return aim.kind === 'least-mass' ? aim.chance : null;
}

function aimOf(question: Question): Aim {
  switch (question.aim.kind) {
    case 'best-chance':
      return { kind: 'best-chance' };
    case 'least-mass':
      return { kind: 'least-mass', maxLoss: Math.floor(-Math.log(question.aim.chance) / SCORE_UNIT) };
    case 'must-do':
      return { kind: 'must-do' };
  }
}

function recheck(
  prepared: Prepared,
  choice: Choice,
  claims: { readonly loss: number; readonly grams: number },
): CheckReport {
  const { scene } = prepared.built;
  const piece = (p: number) => scene.pieces[p]?.id ?? '';
  const report = checkPlan(
    scene,
    choice.carried.map(piece),
    choice.bought.map(piece),
    choice.bundles.map((b) => scene.bundles[b]?.id ?? ''),
    { lossUnits: claims.loss, grams: claims.grams },
  );
  if (!report.ok) {
    const sentences = report.violations.map((v) => v.sentence).slice(0, 5);
    throw new Error(`The answer did not pass its check and is not shown: ${sentences.join(' ')}`);
  }
  return report;
}
