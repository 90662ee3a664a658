import type { Job } from '@waymend/catalogue/shape/job';
import type { Situation } from '@waymend/core/deciding/decide';
import { DARK_FACTOR, decide } from '@waymend/core/deciding/decide';
import { metres } from '@waymend/core/quantity/units';
import type { Metres } from '@waymend/core/quantity/units';
import type { Grade, SceneJob } from '@waymend/core/repairing/scene';
import { waysByGrade } from '@waymend/core/repairing/ways-of';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { ExpedientCard, JobCard, NeedCard, UseCard } from '../answer/card-answer.ts';
import { needWords } from '../explain/why-job.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import { functionWord } from '../scene/function-word.ts';
import { legsOf } from '../scene/rate-input.ts';
import type { Trade } from '../trade.ts';
import type { Carried } from './aboard.ts';
import { Aboard, gradeOfWays } from './aboard.ts';
import { expedientCards, trustedKm } from './expedient-cards.ts';
import { findJob } from './find-job.ts';
import { needCards } from './need-cards.ts';
import { stockName } from './stock-name.ts';
import { torquesOf } from './torques.ts';
import { pieceRef } from './where.ts';

/** What a card is asked for. The people are those of the trip; `withPeople` changes them. */
export interface CardAsk {
  /** Id or words of a job. */
  readonly job: string;
  readonly carried: Carried;
  /** What `carried` is called. */
  readonly with: JobCard['with'];
  readonly dark?: boolean;
  /** Distance to help from here; absent: the worst of the trip. */
  readonly helpKm?: number;
  readonly daylightHours?: number;
  readonly convoy?: boolean;
  readonly hurt?: boolean;
  readonly danger?: boolean;
  readonly waterDays?: number;
  readonly foodDays?: number;
}

const CLOSING =
  "The maker's manual, local law and a licensed mechanic come first. Write down what was done and where, and have it looked at.";
const DARK_CAUTION =
  'In the dark: two lights, one on the head; count the tools before anything is closed or started.';
/** Stock words of wire and fuses, and the functions that make wiring. */
const WIRE_FUNCTIONS: readonly string[] = ['splice-wire', 'fuse', 'bridge-circuit', 'crimp'];

/** Everything about one job on this vehicle with what is here and who is here (M2 to M4). */
export function jobCard(built: BuiltScene, trade: Trade, ask: CardAsk): Result<JobCard> {
  const found = findJob(built.scene, trade, ask.job);
  if (!found.ok) return found;
  const { job, record } = found.value;
  const aboard = new Aboard(built, ask.carried);
  const { garage, trip, vehicle, scene } = built;
  const dark = ask.dark ?? false;
  const help = helpOf(built, ask);
  if (help === null)
    return refuse(
      'help-unknown',
      'This trip has no legs, so nobody has said how far help is; give the distance to help',
    );
  const ways = aboard.ways(job);
  const needs = needCards(built, trade, aboard, job, ways);
  const uses = useCards(job, aboard, trade);
  const expedients = expedientCards(built, trade, aboard, job, record, metres(help.km * 1000));
  const tools = gradeOfWays(ways);
  const lit = !dark || aboard.pieces.some((p) => p.offers.some((o) => o.kind === 'does' && o.fn === 'light'));
  const missing = whyNot(built, job, aboard, needs, uses);
  const now = missing.length === 0;
  const factor = dark ? DARK_FACTOR : 1;
  const names = trip.people.flatMap((id) => garage.people[id]?.name ?? []);
  return ok({
    schema: 'waymend.card/1',
    kind: 'job',
    id: job.id,
    title: job.title,
    trip: trip.name,
    vehicle: vehicle.name,
    with: ask.with,
    now,
    grade: now ? tools : null,
    why: [...missing, ...provisos(needs, tools, now, lit)],
    outcome: record.outcome,
    trustedKm: record.outcome === 'drive-on' ? null : trustedKm(job.trusted),
    minutes: [Math.round(record.minutes[0] * factor), Math.round(record.minutes[1] * factor)],
    dark,
    people: { wanted: job.people, here: scene.crew.count, skill: job.skill, bestSkill: job.bestSkill, names },
    help,
    cautions: dark ? [...record.cautions, DARK_CAUTION] : record.cautions,
    needs,
    uses,
    helps: helpsHere(built, aboard, record),
    steps: record.steps,
    torques: torquesOf(job, record, aboard, garage, trade),
    doNot: record.forbidden ?? [],
    after: record.after.map(({ check, km }) => ({ check, km: km ?? null })),
    expedients,
    wire: makesWire(record)
      ? 'Which wire and which fuse: waymend wire --amps N --metres N. A fuse is never larger than what the wire takes.'
      : null,
    decision: decide(
      situation(built, ask, job, record, now ? tools : null, missing, expedients, metres(help.km * 1000)),
    ),
    closing: CLOSING,
  });
}

/** The trip with other people on it. */
export function withPeople(
  garage: BuiltScene['garage'],
  tripId: string,
  people: readonly string[],
): BuiltScene['garage'] {
  const trip = garage.trips[tripId];
  return trip === undefined
    ? garage
    : { ...garage, trips: { ...garage.trips, [tripId]: { ...trip, people: [...people] } } };
}

/** As said, or the worst of the trip; null when neither is known. */
function helpOf({ garage, tripId }: BuiltScene, ask: CardAsk): JobCard['help'] | null {
  if (ask.helpKm !== undefined) return { km: ask.helpKm, from: 'said' };
  const legs = legsOf(garage, tripId).map(([, leg]) => leg.helpKm);
  return legs.length === 0 ? null : { km: Math.max(...legs), from: 'worst-of-trip' };
}

/** What stands in the way, each in a sentence; empty when the job can be done now. */
function whyNot(
  { scene }: BuiltScene,
  job: SceneJob,
  aboard: Aboard,
  needs: readonly NeedCard[],
  uses: readonly UseCard[],
): readonly string[] {
  const out = needs.flatMap((need) => (need.best === null ? [`Nothing here does this: ${need.what}.`] : []));
  for (const use of uses)
    if (use.left === null)
      out.push(
        `${use.name}: it takes ${use.each}, and ${use.aboard === 0 ? 'none is' : `${use.aboard} are`} here.`,
      );
  if (scene.crew.count < job.people)
    out.push(
      `It takes ${job.people} people, and ${scene.crew.count} ${scene.crew.count === 1 ? 'is' : 'are'} here.`,
    );
  if (job.bestSkill < job.skill)
    out.push(`It asks for skill ${job.skill}, and the best here has ${job.bestSkill}.`);
  if (out.length === 0 && aboard.gradeOf(job) === null)
    throw new Error(`${job.id}: nothing stands in the way, and the check finds no way`);
  return out;
}

/** What to know before starting although it can be done. */
function provisos(
  needs: readonly NeedCard[],
  tools: Grade | null,
  now: boolean,
  lit: boolean,
): readonly string[] {
  const out: string[] = [];
  const assumed = needs.filter((n) => n.size === 'assumed').length;
  if (assumed > 0)
    out.push(
      `${assumed} of its sizes ${assumed === 1 ? 'is' : 'are'} only assumed: try the piece on before you trust the card.`,
    );
  if (now && tools === 'last-resort') out.push('Only as a last resort: something here may be spoiled by it.');
  if (now && tools === 'with-care') out.push('With care: not every piece is the right one for its place.');
  if (!lit) out.push('No light is here, and it is dark.');
  return out;
}

function useCards(job: SceneJob, aboard: Aboard, trade: Trade): readonly UseCard[] {
  return job.uses.map(({ of, units }) => {
    const there = aboard.units(of);
    return {
      of,
      name: stockName(of, trade),
      each: units,
      aboard: there,
      left: there >= units ? Math.round((there - units) * 1000) / 1000 : null,
    };
  });
}

function helpsHere({ garage, scene }: BuiltScene, aboard: Aboard, record: Job): JobCard['helps'] {
  const wanted = (record.helps ?? []).map(({ fn, of }) => ({
    kind: 'function' as const,
    ...functionWord(fn, of),
  }));
  return waysByGrade(aboard.scene, wanted, 1).flatMap(([best], n) => {
    const [id] = best?.pieces ?? [];
    const piece = id === undefined ? undefined : aboard.piece(id);
    const need = wanted[n];
    return piece === undefined || need === undefined
      ? []
      : [{ what: needWords(need, { scene }), with: pieceRef(garage, piece) }];
  });
}

function makesWire(record: Job): boolean {
  return record.needs.some((need) => 'fn' in need && WIRE_FUNCTIONS.includes(need.fn));
}

function situation(
  { scene }: BuiltScene,
  ask: CardAsk,
  job: SceneJob,
  record: Job,
  grade: Grade | null,
  missing: readonly string[],
  expedients: readonly ExpedientCard[],
  help: Metres,
): Situation {
  const limp = expedients.find((e) => e.possible);
  return {
    hurt: ask.hurt ?? false,
    danger: ask.danger ?? false,
    help,
    dark: ask.dark ?? false,
    daylightHours: ask.daylightHours ?? null,
    people: scene.crew.count,
    convoy: ask.convoy ?? false,
    waterDays: ask.waterDays ?? null,
    foodDays: ask.foodDays ?? null,
    fix: {
      possible: grade !== null,
      why: missing.join(' '),
      drives: record.outcome !== 'made-safe',
      trusted: job.trusted,
      minutes: record.minutes,
      beneath: record.raise !== undefined || record.under === true,
      grade,
    },
    limp:
      limp === undefined
        ? null
        : {
            title: limp.title,
            trusted: metres(limp.trustedKm === null ? Number.MAX_SAFE_INTEGER : limp.trustedKm * 1000),
            speedKmh: limp.speedKmh,
          },
  };
}
