import { CARE_RULE_BY_ID } from '@waymend/catalogue/care/all';
import { SELF_DISCHARGES } from '@waymend/catalogue/care/self-discharge-of';
import type { CareDue } from '@waymend/core/caring/due';
import { readinessOf } from '@waymend/core/caring/readiness';
import type { Readiness } from '@waymend/core/caring/readiness';
import { basisText } from '@waymend/core/failing/basis-text';
import { loanLedger } from '@waymend/garage/road/loans';
import type { PlanAnswer } from '../answer/plan-answer.ts';
import type { DueAnswer, OwnLogAnswer, ReadyAnswer } from '../answer/ready-answer.ts';
import type { Prepared, Solved } from '../plan/plan-trip.ts';
import { ownLog } from '../scene/own-log.ts';
import { legsOf } from '../scene/rate-input.ts';
import type { Trade } from '../trade.ts';
import { aboutOneIn } from '../words/chance.ts';
import type { CareAsk } from './care-dues.ts';
import { careDues, careTime } from './care-dues.ts';
import { openRepairs } from './repairs-open.ts';
import {
  careTasks,
  floorTasks,
  musterTasks,
  recentWorkTasks,
  repairTasks,
  unprovenTasks,
  unreadyTasks,
} from './tasks.ts';

/** A question about readiness; the days and the heat come from the trip. */
export type ReadyAsk = Omit<CareAsk, 'days' | 'hottestC'> & {
  /** Distance travelled so far, km; absent: the last that the record knows. */
  readonly nowKm?: number;
};

/** Whether the planned kit of a trip is ready, and everything that care asks of it. `answer` is the plan that was checked. */
export function readyAnswer(
  prepared: Prepared,
  solved: Solved,
  answer: PlanAnswer,
  ask: ReadyAsk,
  trade: Trade,
): ReadyAnswer {
  const { garage, tripId, trip, vehicle, features } = prepared.built;
  const legs = legsOf(garage, tripId);
  const hottest = legs.flatMap(([, leg]) => leg.maxC ?? []);
  const careAsk: CareAsk = {
    ...ask,
    days: trip.days,
    ...(hottest.length === 0 ? {} : { hottestC: Math.max(...hottest) }),
  };
  const time = careTime(careAsk);
  const kit = answer.kit.items.flatMap(({ id, bought }) => (bought ? [] : [id]));
  const dues = careDues(garage, kit, careAsk, trade);
  const repairs = openRepairs(garage, trip.vehicle, trade, ask.nowKm);
  const tripKm = legs.reduce((sum, [, leg]) => sum + leg.km, 0);
  const readiness = readinessOf([
    ...floorTasks(prepared),
    ...musterTasks(prepared),
    ...repairTasks(repairs, tripKm),
    ...recentWorkTasks(prepared, solved, trade.factors.recentWork.factor),
    ...unreadyTasks(prepared, solved, answer),
    ...unprovenTasks(prepared, answer),
    ...careTasks(dues, answer),
  ]);
  return {
    schema: 'waymend.care/1',
    trip: trip.name,
    today: time.today,
    leaveOn: time.leaveOn,
    homeOn: time.homeOn,
    ...readiness,
    words: wordsOf(readiness),
    dues: dues.map(dueAnswer),
    repairs,
    loans: loanLedger(garage, ask.today),
    ownLog: logAnswer(ownLog(garage, trip.vehicle, vehicle, features, trade)),
  };
}

function dueAnswer(due: CareDue): DueAnswer {
  const rule = CARE_RULE_BY_ID.get(due.rule);
  const decay = due.charge === undefined ? undefined : SELF_DISCHARGES.find((s) => s.rule === due.rule);
  const basis = decay?.basis ?? rule?.basis;
  return {
    ...due,
    charge: due.charge ?? null,
    basis:
      basis === undefined || due.words.startsWith('the date printed')
        ? 'read off the pack by the owner'
        : basisText(basis),
  };
}

function logAnswer({ km, learned, outside }: ReturnType<typeof ownLog>): OwnLogAnswer {
  return {
    km: Math.round(Object.values(km ?? {}).reduce((sum, one) => sum + one, 0)),
    outside,
    groups: learned.map(({ group, title, events, expected, prior, posterior }) => ({
      group,
      title,
      events,
      expected,
      prior: belief(prior),
      posterior: belief(posterior),
    })),
  };
}

function belief({ mean, low, high }: { readonly mean: number; readonly low: number; readonly high: number }) {
  return { mean, low, high };
}

function wordsOf({ status, tasks }: Readiness): string {
  const [first] = tasks;
  const blocking = tasks.filter((t) => t.blocks).length;
  if (status === 'not-ready')
    return `Not ready: ${blocking === 1 ? 'one thing has' : `${blocking} things have`} to be put right before anybody leaves.`;
  if (status === 'ready' || first === undefined)
    return 'Ready: nothing is known to be missing, flat, out of date or unseen.';
  const lost =
    first.chanceLost > 0
      ? `; left undone, the first costs ${aboutOneIn(first.chanceLost)} of the trips that would get home unaided`
      : '';
  return `Ready with gaps: ${tasks.length === 1 ? 'one thing' : `${tasks.length} things`} to do before leaving${lost}.`;
}
