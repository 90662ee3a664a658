import { CHASSIS_JOBS } from '../../src/jobs/chassis.ts';
import type { Expedient, Job, JobNeed } from '../../src/shape/job.ts';
import type { Condition, Feature } from '../../src/shape/words.ts';

export const FLUIDS = ['coolant', 'engine-oil', 'gear-oil', 'atf', 'brake', 'power-steering'];
export const BY_ID = new Map(CHASSIS_JOBS.map((job) => [job.id, job]));

export function job(id: string): Job {
  const found = BY_ID.get(id);
  if (found === undefined) throw new Error(`no job ${id}`);
  return found;
}

export function holds(when: Condition | undefined, has: ReadonlySet<Feature>): boolean {
  return (
    (when?.all ?? []).every((feature) => has.has(feature)) &&
    (when?.any === undefined || when.any.some((feature) => has.has(feature))) &&
    !(when?.none ?? []).some((feature) => has.has(feature))
  );
}

/** Whether some vehicle can meet both conditions. */
export function together(a: Condition | undefined, b: Condition | undefined): boolean {
  const always = [...(a?.all ?? []), ...(b?.all ?? [])];
  const choices = (when: Condition | undefined): readonly Feature[][] =>
    when?.any === undefined ? [[]] : when.any.map((feature) => [feature]);
  return choices(a).some((one) =>
    choices(b).some((other) => {
      const has = new Set([...always, ...one, ...other]);
      return holds(a, has) && holds(b, has);
    }),
  );
}

const numbered = (prefix: string, last: number): string[] =>
  Array.from({ length: last }, (_, index) => `${prefix}-${String(index + 1).padStart(2, '0')}`);
export const TRADE_IDS = [
  ...numbered('WT', 10),
  ...numbered('BR', 9),
  ...numbered('DR', 11),
  ...numbered('SS', 11),
];

/** Every list of needs with the name it goes by. */
export const NEEDS: readonly (readonly [string, readonly JobNeed[], Job])[] = CHASSIS_JOBS.flatMap((one) => [
  [one.id, one.needs, one] as const,
  ...one.expedients.map((expedient) => [expedient.id, expedient.needs, one] as const),
]);
export const EXPEDIENTS: readonly (readonly [Job, Expedient])[] = CHASSIS_JOBS.flatMap((one) =>
  one.expedients.map((expedient) => [one, expedient] as const),
);

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
