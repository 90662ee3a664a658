import { readFileSync } from 'node:fs';
import { readList } from '@waymend/garage/import/read-list';
import { importInto } from '@waymend/garage/import/import-into';
import type { Garage } from '@waymend/garage/record/schema';
import { garageFile } from '@waymend/garage/record/schema';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { expect, it } from 'vitest';
import { STEPS, wayOf } from '../../src/places/garage/begin/the-way.ts';
import { changeLeg, changeTrip, legsOf } from '../../src/places/garage/trip/edit-trip.ts';
import { answer } from '../../src/worker/answer.ts';
import type { Reply, Request } from '../../src/worker/protocol.ts';

const solver = await createHighsSolver();
const LIST = readFileSync(new URL('../../../../examples/demo-belongings.txt', import.meta.url), 'utf8');
const EMPTY_GARAGE: Garage = garageFile.parse({ waymend: 1, name: '' });
const NAMES = { vehicle: 'Wagon', person: 'Driver', trip: 'First trip', leg: 'There', nose: 'Nose' };

/** An input: a tap, a typed field or a paste, and what it does to the garage. */
interface Input {
  readonly does: string;
  readonly change?: (garage: Garage) => Garage | Promise<Garage>;
}

const firstLeg = (garage: Garage): string => legsOf(garage, 'first-trip')[0]?.[0] ?? '';

/** The way of a newcomer through the sheets, as docked on them: one line for each input. */
const INPUTS: readonly Input[] = [
  { does: 'tap the kind of vehicle', change: start },
  { does: 'tap "List what you own"' },
  { does: 'tap into the list' },
  { does: 'paste the list' },
  { does: 'tap to add what was understood', change: paste },
  { does: 'tap Trip' },
  { does: 'type the length', change: (g) => changeLeg(g, firstLeg(g), { km: 900 }) },
  { does: 'open the surfaces' },
  { does: 'tap a surface', change: (g) => changeLeg(g, firstLeg(g), { surface: 'corrugated' }) },
  { does: 'type the distance to help', change: (g) => changeLeg(g, firstLeg(g), { helpKm: 200 }) },
  { does: 'type the days', change: (g) => changeTrip(g, 'first-trip', { days: 9 }) },
  { does: 'tap Kit' },
];

it('from an empty start to a useful plan takes at most 15 inputs', async () => {
  expect(INPUTS.length).toBeLessThanOrEqual(15);
  let garage = EMPTY_GARAGE;
  const states: string[] = [];
  for (const { change } of INPUTS) {
    garage = (await change?.(garage)) ?? garage;
    const way = wayOf(garage, Object.keys(garage.trips)[0] ?? null, false);
    states.push(way.find(({ isNext }) => isNext)?.id ?? 'nothing');
  }
  // The sheet Begin leads on after each input: belongings, then the trip, then the kit.
  expect([...new Set(states)]).toEqual(['belongings', 'trip', 'kit']);

  const plan = await planned(garage);
  expect(plan.status).toBe('proven');
  expect(plan.trip.km).toBe(900);
  expect(plan.kit.items.length).toBeGreaterThan(20);
  // Useful: the kit halves the trips that need help, at least.
  expect(1 - plan.unaided.kit).toBeLessThan((1 - plan.unaided.empty) / 2);
  expect(wayOf(garage, 'first-trip', true).map(({ state }) => state)).toEqual([
    'assumed',
    'done',
    'done',
    'done',
  ]);
});

it('an empty garage begins with its vehicle and nothing else is asked for', () => {
  const way = wayOf(EMPTY_GARAGE, null, false);
  expect(way.map(({ id }) => id)).toEqual(STEPS);
  expect(way.map(({ state }) => state)).toEqual(['open', 'open', 'later', 'later']);
  expect(way.find(({ isNext }) => isNext)?.id).toBe('vehicle');
});

it('the trip that came with the vehicle is a first guess until somebody touches it', async () => {
  const garage = await start(EMPTY_GARAGE);
  const tripOf = (g: Garage) => wayOf(g, 'first-trip', false).find(({ id }) => id === 'trip')?.state;
  expect(tripOf(garage)).toBe('assumed');
  expect(tripOf(changeTrip(garage, 'first-trip', { days: 4 }))).toBe('done');
  expect(tripOf(changeLeg(garage, firstLeg(garage), { km: 0 }))).toBe('open');
});

it('a pattern nobody knows is refused in a sentence', async () => {
  const reply = await ask({
    kind: 'trip/start',
    garage: EMPTY_GARAGE,
    pattern: 'hovercraft',
    names: NAMES,
    hitchTo: null,
  });
  expect(reply).toMatchObject({ kind: 'refused', refusals: [{ id: 'pattern-unknown' }] });
});

async function start(garage: Garage): Promise<Garage> {
  const reply = await ask({
    kind: 'trip/start',
    garage,
    pattern: 'live-axle-wagon',
    names: NAMES,
    hitchTo: null,
  });
  if (reply.kind !== 'trip/started') throw new Error(`not started: ${reply.kind}`);
  return reply.garage;
}

function paste(garage: Garage): Garage {
  const reading = readList(LIST);
  if (!reading.ok) throw new Error('the list was refused');
  return importInto(garage, reading.value.matches).garage;
}

async function planned(garage: Garage): Promise<PlanAnswer> {
  const reply = await ask({
    kind: 'plan',
    garage,
    trip: 'first-trip',
    question: { aim: { kind: 'best-chance' } },
  });
  if (reply.kind !== 'plan') throw new Error(`no plan: ${JSON.stringify(reply)}`);
  return reply.answer;
}

async function ask(request: Request): Promise<Reply> {
  const replies: Reply[] = [];
  await answer(request, {
    solver,
    clock: () => performance.now() / 1000,
    stopAsked: () => false,
    say: (reply) => replies.push(reply),
  });
  const last = replies.at(-1);
  if (last === undefined) throw new Error('no reply');
  return last;
}
