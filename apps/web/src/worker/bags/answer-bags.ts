import { calendarText } from '@waymend/core/caring/icalendar';
import type { Result } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { answerOf } from '@waymend/planner/plan/answer';
import { prepare } from '@waymend/planner/plan/plan-trip';
import { calendarEntries } from '@waymend/planner/ready/calendar-entries';
import { changedChance } from '@waymend/planner/ready/changed-chance';
import { piecesForJob } from '@waymend/planner/ready/job-pieces';
import { readyAnswer } from '@waymend/planner/ready/ready';
import { restockList, stockOf } from '@waymend/planner/ready/restock';
import { nameOf } from '@waymend/planner/scene/pieces';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { kitOf, stowTrip } from '@waymend/planner/stow/stow-trip';
import { carriedPieces } from '@waymend/planner/views/carried';
import type { Errand } from '../answer.ts';
import { keptPlan } from '../kit/planning.ts';
import type { Reply } from '../protocol.ts';
import { outlineOf } from './outline-of.ts';
import type { BagsReply, BagsRequest, BagThing } from './protocol.ts';

const ENTRIES = new Map(SHIPPED_TRADE.belongings.map((b) => [b.id, b]));
const STOCK_OF = stockOf(SHIPPED_TRADE);

/** Longest a stowage is improved before the best so far is shown with its gap. */
const STOW_SECONDS = 5;

type Of<K extends BagsRequest['kind']> = Extract<BagsRequest, { readonly kind: K }>;

/** Answers one question of the Bags place. */
export function bagsReply(request: BagsRequest, errand: Errand): Reply {
  switch (request.kind) {
    case 'bags/things':
      return { kind: 'bags/things', things: thingsOf(request.garage) };
    case 'bags/job':
      return said(jobPieces(request));
    case 'bags/changed':
      return said(changed(request));
    case 'bags/ready':
      return ready(request);
    case 'bags/stow':
      return stowed(request, errand);
  }
}

function thingsOf(garage: Garage): Readonly<Record<string, BagThing>> {
  return Object.fromEntries(
    Object.entries(garage.belongings).map(([id, belonging]) => {
      const entry = belonging.is === undefined ? undefined : ENTRIES.get(belonging.is);
      const thing: BagThing = {
        name: nameOf(entry, belonging) ?? belonging.line ?? id,
        asNew: belonging.is === undefined ? null : STOCK_OF(belonging.is),
        outline: outlineOf(entry),
      };
      return [id, thing];
    }),
  );
}

function jobPieces({ garage, trip, kit, job }: Of<'bags/job'>): Result<BagsReply> {
  const prepared = prepare(garage, trip, SHIPPED_TRADE);
  if (!prepared.ok) return prepared;
  const carried = carriedPieces(prepared.value.built.scene.pieces, kit);
  return { ok: true, value: { kind: 'bags/job', pieces: piecesForJob(prepared.value, carried, job) } };
}

function changed({ garage, after, trip, kit }: Of<'bags/changed'>): Result<BagsReply> {
  const prepared = prepare(garage, trip, SHIPPED_TRADE);
  if (!prepared.ok) return prepared;
  const carried = carriedPieces(prepared.value.built.scene.pieces, kit);
  const change = changedChance(garage, after, trip, [...carried], SHIPPED_TRADE);
  if (!change.ok) return change;
  const restock = restockList(after, trip, SHIPPED_TRADE);
  return { ok: true, value: { kind: 'bags/changed', changed: change.value, restock } };
}

function ready({ garage, trip, question, today, leaveOn }: Of<'bags/ready'>): Reply {
  const plan = keptPlan(garage, trip, question);
  if (plan === undefined) return NOT_PLANNED;
  const answer = answerOf(plan.prepared, question, plan.solved, SHIPPED_TRADE);
  if (!answer.ok) return { kind: 'refused', refusals: [answer.error] };
  const ask = { today, leaveOn };
  const told = readyAnswer(plan.prepared, plan.solved, answer.value, ask, SHIPPED_TRADE);
  const { km, days } = answer.value.trip;
  const dues = told.dues.map(({ charge, ...due }) => ({ ...due, ...(charge === null ? {} : { charge }) }));
  const entries = calendarEntries(dues, told.repairs, { ...ask, kmPerDay: km / Math.max(1, days) });
  return { kind: 'bags/ready', ready: told, calendar: calendarText(garage.name, today, entries) };
}

function stowed({ garage, trip, question }: Of<'bags/stow'>, { solver, clock, stopAsked }: Errand): Reply {
  const plan = keptPlan(garage, trip, question);
  if (plan === undefined) return NOT_PLANNED;
  const { built } = plan.prepared;
  const stow = stowTrip(built, kitOf(built, plan.solved), SHIPPED_TRADE, solver, {
    clock,
    timeLimit: STOW_SECONDS,
    shouldStop: stopAsked,
  });
  return stow.ok ? { kind: 'bags/stow', stow: stow.value } : { kind: 'refused', refusals: [stow.error] };
}

const NOT_PLANNED: Reply = {
  kind: 'refused',
  refusals: [{ id: 'plan-missing', message: 'The kit is not planned yet; wait for it, then ask again' }],
};

function said(result: Result<BagsReply>): Reply {
  return result.ok ? result.value : { kind: 'refused', refusals: [result.error] };
}
