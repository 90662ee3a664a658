import type { CardAnswer } from '@waymend/planner/answer/card-answer';
import type { Carried } from '@waymend/planner/card/aboard';
import type { CardAsk } from '@waymend/planner/card/job-card';
import { jobCard, withPeople } from '@waymend/planner/card/job-card';
import { symptomCard, symptomList } from '@waymend/planner/card/symptom-card';
import type { BuiltScene } from '@waymend/planner/scene/build-scene';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Result } from '@waymend/core/result';
import { ok, refuse as refusal } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { list, number, text, tripOf } from '../text/ask.ts';
import { cardText } from '../text/card-text.ts';
import { paintFor } from '../text/paint.ts';
import { garageAt, refuse } from './garage-at.ts';
import { planned } from './planned.ts';

type Options = Readonly<Record<string, unknown>>;

/** A job's card, or the way from a symptom to it. */
export async function cardCommand(
  io: Io,
  path: string,
  job: string | undefined,
  options: Options,
): Promise<ExitCode> {
  const garage = await garageAt(io, path);
  if (garage === null) return EXIT.refused;
  const asked = questionOf(garage, job, options);
  if (!asked.ok) {
    refuse(io, [asked.error]);
    return EXIT.refused;
  }
  const { tripId, about, people } = asked.value;
  const built = buildScene(
    people === null ? garage : withPeople(garage, tripId, people),
    tripId,
    SHIPPED_TRADE,
  );
  if (!built.ok) {
    refuse(io, [built.error]);
    return EXIT.refused;
  }
  // The list of symptoms asks nothing of the kit.
  const carried =
    about.kind === 'symptoms' || options['with'] === 'everything'
      ? { kind: 'carried' as const, carried: { kind: 'everything' as const } }
      : await kitOf(io, path, tripId);
  if (carried.kind === 'code') return carried.code;
  const answer = answerOf(built.value, about, carried.carried, asked.value);
  if (!answer.ok) {
    refuse(io, [answer.error]);
    return EXIT.refused;
  }
  if (options['json'] === true) io.out(`${JSON.stringify(answer.value, null, 2)}\n`);
  else io.out(cardText(answer.value, paintFor(io.colour)));
  return EXIT.done;
}

type About =
  | { readonly kind: 'symptoms' }
  | { readonly kind: 'symptom'; readonly id: string; readonly answers: ReadonlyMap<string, string> }
  | { readonly kind: 'job'; readonly job: string };

interface Asked {
  readonly tripId: string;
  readonly about: About;
  readonly people: readonly string[] | null;
  readonly how: Omit<CardAsk, 'job' | 'carried'>;
}

function answerOf(built: BuiltScene, about: About, carried: Carried, { how }: Asked): Result<CardAnswer> {
  switch (about.kind) {
    case 'symptoms':
      return ok(symptomList(built));
    case 'symptom':
      return symptomCard(built, SHIPPED_TRADE, about.id, about.answers, carried);
    case 'job':
      return jobCard(built, SHIPPED_TRADE, { ...how, job: about.job, carried });
  }
}

/** The pieces of the planned kit. */
async function kitOf(
  io: Io,
  path: string,
  tripId: string,
): Promise<
  { readonly kind: 'carried'; readonly carried: Carried } | { readonly kind: 'code'; readonly code: ExitCode }
> {
  const made = await planned(io, path, { trip: tripId });
  if (made.kind === 'code') return made;
  const { prepared, solved } = made.planned;
  const ids = new Set(solved.choice.carried.flatMap((p) => prepared.built.scene.pieces[p]?.id ?? []));
  return { kind: 'carried', carried: { kind: 'pieces', ids } };
}

/** Longest way to help, and longest wait, that anybody means; km, hours, days. */
const MOST_KM = 5000;
const MOST_HOURS = 24;
const MOST_DAYS = 365;

function questionOf(garage: Garage, job: string | undefined, options: Options): Result<Asked> {
  const trip = tripOf(garage, text(options['trip']));
  if (!trip.ok) return trip;
  const about = aboutOf(job, options);
  if (!about.ok) return about;
  const km = number(text(options['at']), 'at', 0, MOST_KM);
  if (!km.ok) return km;
  const light = number(text(options['daylight']), 'daylight', 0, MOST_HOURS);
  if (!light.ok) return light;
  const water = number(text(options['water']), 'water', 0, MOST_DAYS);
  if (!water.ok) return water;
  const food = number(text(options['food']), 'food', 0, MOST_DAYS);
  if (!food.ok) return food;
  const people = list(options['people']);
  const strangers = (people ?? []).filter((id) => !Object.hasOwn(garage.people, id));
  if (strangers.length > 0)
    return refusal(
      'person-unknown',
      `There is nobody called "${strangers.join(', ').slice(0, 60)}"; this garage has ${Object.keys(garage.people).join(', ')}`,
    );
  return ok({
    tripId: trip.value,
    about: about.value,
    people,
    how: {
      with: options['with'] === 'everything' ? 'everything' : 'kit',
      dark: options['dark'] === true,
      convoy: options['convoy'] === true,
      hurt: options['hurt'] === true,
      danger: options['danger'] === true,
      ...(km.value === null ? {} : { helpKm: km.value }),
      ...(light.value === null ? {} : { daylightHours: light.value }),
      ...(water.value === null ? {} : { waterDays: water.value }),
      ...(food.value === null ? {} : { foodDays: food.value }),
    },
  });
}

function aboutOf(job: string | undefined, options: Options): Result<About> {
  const symptom = options['symptom'];
  const given = list(options['answer']) ?? [];
  if (symptom === undefined) {
    if (given.length > 0)
      return refusal('answer-without-symptom', 'An --answer belongs to a --symptom; name the symptom too');
    return job === undefined
      ? refusal('card-incomplete', 'Name a job, or start from what you notice with --symptom')
      : ok({ kind: 'job', job });
  }
  if (job !== undefined) return refusal('card-both', 'Give either a job or a --symptom, not both');
  const id = text(symptom);
  if (id === null) {
    return given.length > 0
      ? refusal('answer-without-symptom', 'An --answer belongs to one symptom; give its id after --symptom')
      : ok({ kind: 'symptoms' });
  }
  const answers = new Map<string, string>();
  for (const said of given) {
    const [question = '', answer = '', more] = said.split('=').map((part) => part.trim());
    if (question === '' || answer === '' || more !== undefined)
      return refusal('answer-unclear', `An answer is written question=answer, not "${said.slice(0, 40)}"`);
    answers.set(question, answer);
  }
  return ok({ kind: 'symptom', id, answers });
}
