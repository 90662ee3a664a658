import { KitState } from '@waymend/core/choosing/kit-state';
import type { Solver } from '@waymend/core/choosing/solver-port';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { MeasureNext, SureAnswer, WhatIf } from '../answer/sure-answer.ts';
import { rateRatios } from '../explain/at-real-mass.ts';
import type { Patience, Prepared, Question, Solved } from '../plan/plan-trip.ts';
import { seeded } from '../simulate/randomness.ts';
import type { Trade } from '../trade.ts';
import { aboutOneIn } from '../words/chance.ts';
import { chanceUnder } from './band.ts';
import { belongingsOf, bestKitUnder, sureItems } from './best-kits.ts';
import type { GroupPrior, RateDraw } from './draws.ts';
import { rateDraws } from './draws.ts';
import { doubts, worthOfKnowing } from './measure-next.ts';
import { carry, openByGroup } from './open-by-group.ts';
import { sceneUnder, withScene } from './other-scene.ts';
import { preventions } from './prevent.ts';
import { groupPriors } from './priors.ts';
import { band } from './spread.ts';

export interface SureAsk {
  /** Beliefs for which the best kit is looked for. */
  readonly draws: number;
  readonly seed: number;
  /** Assumed sizes to look into, what most hangs on first. */
  readonly sizes: number;
  readonly patience?: Patience;
  readonly onStep?: (done: number, of: number) => void;
}

export type SureOutcome =
  | { readonly kind: 'sure'; readonly answer: SureAnswer }
  | { readonly kind: 'stopped' };

/** Rates are believed within three times either way for most groups: what if all are off that far at once? */
const TIMES_OFF = 3;

/** How sure a plan is (M11): drawn rates, other sizes, and what would help without carrying anything. */
export function sureOf(
  prepared: Prepared,
  question: Question,
  solved: Solved,
  solver: Solver,
  trade: Trade,
  ask: SureAsk,
): Result<SureOutcome> {
  const { built, reading } = prepared;
  const patience = ask.patience ?? {};
  const stop = (): boolean => patience.shouldStop?.() === true;
  const ratio = rateRatios(built, trade, solved.outcome.grams);
  if (!ratio.ok) return ratio;
  const open = openByGroup(reading, solved.state, ratio.value);
  const priors = groupPriors(built, trade);
  const now = belongingsOf(prepared, solved);
  const carried = piecesOf(prepared, solved);
  const all = doubts(prepared, trade);
  const looked = all.slice(0, ask.sizes);
  const steps = ask.draws + 2 + looked.length;
  let done = 0;
  const step = (): void => ask.onStep?.(++done, steps);

  const kits: ReadonlySet<string>[] = [];
  for (const draw of rateDraws(priors, ask.draws, seeded(ask.seed))) {
    if (stop()) return ok({ kind: 'stopped' });
    const best = bestKitUnder(prepared, question, draw, solver, patience);
    if (best !== null) kits.push(best.belongings);
    step();
  }
  const whatIf: WhatIf[] = [];
  for (const times of [TIMES_OFF, 1 / TIMES_OFF]) {
    if (stop()) return ok({ kind: 'stopped' });
    whatIf.push(allTimes(prepared, question, now, times, { trade, priors, carried, solver, patience }));
    step();
  }
  const measureNext: MeasureNext[] = [];
  for (const doubt of looked) {
    if (stop()) return ok({ kind: 'stopped' });
    const one = worthOfKnowing(prepared, question, carried, doubt, solver, patience);
    if (one === null) return ok({ kind: 'stopped' });
    if (one.gain > 0) measureNext.push(one);
    step();
  }
  // A last answer may have been cut short by the stop that nobody has looked at yet.
  if (stop()) return ok({ kind: 'stopped' });
  const chance = band(open, priors);
  return ok({
    kind: 'sure',
    answer: {
      schema: 'waymend.sure/1',
      trip: built.tripId,
      seed: ask.seed,
      draws: ask.draws,
      planned: kits.length,
      chance,
      together: band(open, priors, true),
      words: `Help needed on ${aboutOneIn(1 - chance.chance)} trips, if the rates are what is planned with. Rates per part are published nowhere, so nobody knows them well: 9 in 10 beliefs about them put it between ${aboutOneIn(1 - chance.high)} and ${aboutOneIn(1 - chance.low)}.`,
      items: sureItems(prepared, now, kits),
      whatIf,
      measureNext: measureNext.sort((a, b) => b.gain - a.gain || (a.joint < b.joint ? -1 : 1)),
      notLookedInto: all.length - looked.length,
      prevent: preventions(reading, solved.state, trade),
    },
  });
}

function allTimes(
  prepared: Prepared,
  question: Question,
  now: ReadonlySet<string>,
  times: number,
  { trade, priors, carried, solver, patience }: Means,
): WhatIf {
  const draw: RateDraw = new Map(priors.map(({ id }) => [id, times]));
  const under = withScene(prepared, sceneUnder(prepared.built.scene, draw));
  const best = bestKitUnder(prepared, question, draw, solver, patience);
  const names = new Map(prepared.built.scene.pieces.map((p) => [p.belonging, p.name]));
  const only = (some: Iterable<string>, others: ReadonlySet<string>): readonly string[] =>
    [...some].filter((id) => !others.has(id)).map((id) => names.get(id) ?? id);
  return {
    words: times > 1 ? `every rate ${times} times higher` : `every rate ${Math.round(1 / times)} times lower`,
    times,
    // Counted in the problem of those rates, spares that run short included, as the best kit is.
    chance: under.ok ? chanceIn(under.value, carried, trade) : 0,
    best: best === null ? null : chanceIn(best.under, piecesOf(best.under, best.solved), trade),
    joins: best === null ? [] : only(best.belongings, now),
    leaves: best === null ? [] : only(now, best.belongings),
  };
}

interface Means {
  readonly trade: Trade;
  readonly priors: readonly GroupPrior[];
  /** The planned kit. */
  readonly carried: ReadonlySet<string>;
  readonly solver: Solver;
  readonly patience: Patience;
}

/** Chance of these pieces in this question, at the mass they really have. */
function chanceIn({ built, reading }: Prepared, carried: ReadonlySet<string>, trade: Trade): number {
  const state = carry(new KitState(reading.compiled), reading, carried);
  const ratio = rateRatios(built, trade, state.grams);
  return chanceUnder(openByGroup(reading, state, ratio.ok ? ratio.value : new Map()), new Map());
}

function piecesOf({ built }: Prepared, { choice }: Solved): ReadonlySet<string> {
  return new Set(choice.carried.flatMap((p) => built.scene.pieces[p]?.id ?? []));
}
