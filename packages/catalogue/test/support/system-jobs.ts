import { SYSTEM_FAILURES } from '../../src/failures/systems.ts';
import { SYSTEM_JOBS } from '../../src/jobs/systems.ts';
import { SYSTEM_PLACES } from '../../src/places/systems.ts';
import type { Expedient, Job, JobNeed, JobUse } from '../../src/shape/job.ts';
import type { PlaceId } from '../../src/shape/place-ids.ts';
import type { Condition, Feature } from '../../src/shape/words.ts';

export const FLUIDS = ['coolant', 'engine-oil', 'gear-oil', 'atf', 'brake', 'power-steering'];
export const BY_ID = new Map(SYSTEM_JOBS.map((job) => [job.id, job]));

export function job(id: string): Job {
  const found = BY_ID.get(id);
  if (found === undefined) throw new Error(`no job ${id}`);
  return found;
}

export function place(id: PlaceId) {
  const found = SYSTEM_PLACES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no place ${id}`);
  return found;
}

export function failure(id: string) {
  const found = SYSTEM_FAILURES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no failure ${id}`);
  return found;
}

export function holds(when: Condition | undefined, has: ReadonlySet<Feature>): boolean {
  return (
    (when?.all ?? []).every((feature) => has.has(feature)) &&
    (when?.any === undefined || when.any.some((feature) => has.has(feature))) &&
    !(when?.none ?? []).some((feature) => has.has(feature))
  );
}

/** Whether some vehicle meets both. */
export function together(a: Condition | undefined, b: Condition | undefined): boolean {
  const choices = (when: Condition | undefined): readonly (readonly Feature[])[] =>
    when?.any === undefined ? [[]] : when.any.map((feature) => [feature]);
  return choices(a).some((one) =>
    choices(b).some((other) => {
      const has = new Set([...(a?.all ?? []), ...(b?.all ?? []), ...one, ...other]);
      return holds(a, has) && holds(b, has);
    }),
  );
}

const numbered = (prefix: string, last: number): readonly string[] =>
  Array.from({ length: last }, (_, index) => `${prefix}-${String(index + 1).padStart(2, '0')}`);
export const TRADE_IDS = [
  ...numbered('CO', 8),
  ...numbered('FU', 9),
  ...numbered('ST', 8),
  ...numbered('EL', 7),
  ...numbered('BO', 5),
  ...numbered('EX', 2),
  ...numbered('CT', 5),
  ...numbered('EN', 2),
  ...numbered('GL', 3),
];

export const EXPEDIENTS: readonly (readonly [Job, Expedient])[] = SYSTEM_JOBS.flatMap((one) =>
  one.expedients.map((expedient) => [one, expedient] as const),
);
export const NEEDS: readonly (readonly [string, readonly JobNeed[], Condition | undefined])[] = [
  ...SYSTEM_JOBS.map((one) => [one.id, one.needs, one.when] as const),
  ...EXPEDIENTS.map(([one, expedient]) => [expedient.id, expedient.needs, one.when] as const),
];
export const USES: readonly (readonly [string, JobUse, Condition | undefined])[] = [
  ...SYSTEM_JOBS.flatMap((one) => (one.uses ?? []).map((use) => [one.id, use, one.when] as const)),
  ...EXPEDIENTS.flatMap(([one, expedient]) =>
    (expedient.uses ?? []).map((use) => [expedient.id, use, one.when] as const),
  ),
];

export function functionsOf(needs: readonly JobNeed[]): readonly string[] {
  return needs.flatMap((need) => ('fn' in need ? [need.fn] : []));
}

export function textsOf(one: Job): readonly string[] {
  return [
    one.title,
    ...one.steps,
    ...one.cautions,
    ...(one.forbidden ?? []),
    ...one.after.map((after) => after.check),
    ...one.expedients.flatMap((expedient) => [expedient.title, expedient.limits, ...expedient.steps]),
  ];
}
