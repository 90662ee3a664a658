import type { Expedient, Job, JobNeed, JobUse } from '@waymend/catalogue/shape/job';
import { TRUST_KM } from '@waymend/catalogue/shape/trust';
import type { Feature, System, Trust } from '@waymend/catalogue/shape/words';
import type { Metres } from '@waymend/core/quantity/units';
import { metres } from '@waymend/core/quantity/units';
import type { Joint, SceneJob, SceneNeed } from '@waymend/core/repairing/scene';
import type { Person } from '@waymend/garage/record/schema';
import { holds } from './features.ts';
import { functionWord } from './function-word.ts';

/** Chance factor of a job nobody aboard has done before and nobody has skill to spare for (M4, estimate). */
export const UNPRACTISED = 0.85;
/** Default chance of an expedient relative to the proper job (M4, estimate). */
export const EXPEDIENT = 0.9;

/** What the jobs need to know about the vehicle beyond its joints. */
export interface RaiseFacts {
  /** 60 % of the heavier axle's rating. */
  readonly liftKg: number;
  /** Lifted or on tall tyres: the ordinary jack does not reach. */
  readonly tall: boolean;
}

/** How far a trust code reaches (M4). */
export function trustedDistance(trust: Trust | undefined): Metres {
  const km = TRUST_KM[trust ?? 'T0'];
  return metres(km === null ? Number.MAX_SAFE_INTEGER : km * 1000);
}

/** Every job and expedient this vehicle and crew could face, one per position (M4). */
export function sceneJobs(
  jobs: readonly Job[],
  joints: readonly Joint[],
  features: ReadonlySet<Feature>,
  people: readonly Person[],
  raise: RaiseFacts,
): readonly SceneJob[] {
  const byPlace = new Map<string, Joint[]>();
  for (const joint of joints) byPlace.set(joint.place, [...(byPlace.get(joint.place) ?? []), joint]);
  const out: SceneJob[] = [];
  for (const job of jobs) {
    if (!holds(job.when, features)) continue;
    for (const position of positionsOf(job, byPlace)) {
      const suffix = position === null ? '' : `@${position}`;
      const title = position === null ? job.title : `${job.title}, ${position}`;
      const trusted =
        job.outcome === 'drive-on'
          ? trustedDistance('T4')
          : job.outcome === 'limp'
            ? trustedDistance(job.trust)
            : metres(0);
      const common = {
        ...(position === null ? {} : { position }),
        system: job.system,
        people: job.people,
        bestSkill: bestSkill(people, job.system),
      };
      const practice = practised(people, job, job.skill);
      out.push({
        ...common,
        id: `${job.id}${suffix}`,
        job: job.id,
        title,
        expedient: false,
        needs: [...raising(job, raise), ...expand(job.needs, byPlace, position)],
        uses: uses(job.uses),
        skill: job.skill,
        chanceFactor: practice,
        trusted,
      });
      for (const expedient of job.expedients) {
        const skill = expedient.skill ?? job.skill;
        out.push({
          ...common,
          id: `${expedientId(job, expedient)}${suffix}`,
          job: job.id,
          title: position === null ? expedient.title : `${expedient.title}, ${position}`,
          expedient: true,
          needs: expand(expedient.needs, byPlace, position),
          uses: uses(expedient.uses),
          skill,
          chanceFactor: practised(people, job, skill) * (expedient.relativeChance ?? EXPEDIENT),
          trusted: trustedDistance(expedient.trust),
        });
      }
    }
  }
  return out;
}

function expedientId(job: Job, expedient: Expedient): string {
  return expedient.id.startsWith(job.id) ? expedient.id : `${job.id}/${expedient.id}`;
}

function uses(list: readonly JobUse[] | undefined): SceneJob['uses'] {
  return list ?? [];
}

/** A job happens once per position of the first of its places that has positions. */
function positionsOf(job: Job, byPlace: ReadonlyMap<string, readonly Joint[]>): readonly (string | null)[] {
  for (const need of job.needs) {
    if (!('turn' in need)) continue;
    const positions = [
      ...new Set(
        (byPlace.get(need.turn) ?? []).flatMap((j) => (j.position === undefined ? [] : [j.position])),
      ),
    ];
    if (positions.length > 0) return positions.sort();
  }
  return [null];
}

function jointsFor(
  place: string,
  byPlace: ReadonlyMap<string, readonly Joint[]>,
  position: string | null,
): readonly Joint[] {
  const all = byPlace.get(place) ?? [];
  if (position === null) return all;
  const here = all.filter((j) => j.position === undefined || j.position === position);
  return here.length > 0 ? here : all;
}

function expand(
  needs: readonly JobNeed[],
  byPlace: ReadonlyMap<string, readonly Joint[]>,
  position: string | null,
): SceneNeed[] {
  const out: SceneNeed[] = [];
  for (const need of needs) {
    if ('turn' in need) {
      // A place this vehicle does not have asks for nothing.
      for (const joint of jointsFor(need.turn, byPlace, position))
        out.push({ kind: 'turn', joint: joint.id });
      continue;
    }
    const { fn, of, count, safety, at } = need;
    const torque = at === undefined ? [] : jointsFor(at, byPlace, position).map((j) => j.torque);
    const amount = need.amount ?? (torque.length > 0 ? Math.max(...torque) : undefined);
    out.push({
      kind: 'function',
      ...functionWord(fn, of),
      ...(amount === undefined ? {} : { amount }),
      ...(count === undefined ? {} : { count }),
      ...(safety === undefined ? {} : { safety }),
    });
  }
  return out;
}

function raising(job: Job, facts: RaiseFacts): SceneNeed[] {
  const out: SceneNeed[] = [];
  if (job.raise !== undefined) {
    const high = job.raise === 'high' || facts.tall;
    out.push({ kind: 'function', fn: 'chock' }, { kind: 'function', fn: 'base' });
    out.push({ kind: 'function', fn: 'lift', amount: facts.liftKg, ...(high ? { of: 'high' } : {}) });
  }
  if (job.under) out.push({ kind: 'function', fn: 'support', amount: facts.liftKg, safety: true });
  return out;
}

function bestSkill(people: readonly Person[], system: System): number {
  return Math.max(0, ...people.map((p) => p.skills[system] ?? p.skill));
}

function practised(people: readonly Person[], job: Job, skill: number): number {
  const done = people.some((p) => p.practised.includes(job.id) || (p.skills[job.system] ?? p.skill) > skill);
  return done ? 1 : UNPRACTISED;
}
