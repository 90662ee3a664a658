import { GRADES } from './grade.ts';
import { inScoreUnits, blockedBy, jobOptions, toolChance } from './job-options.ts';
import type { Blocked, JobOption } from './job-options.ts';
import type { NeedWriter } from './need-writer.ts';
import type { Grade, Scene, SceneJob, ScenePiece, Trouble } from './scene.ts';
import type { Stock } from './stock.ts';
import { demandOn } from './stock.ts';

/** Troubles that ask for the same and are worth the same share of it, as one event. */
export interface Event {
  readonly id: string;
  readonly troubles: readonly Trouble[];
  readonly loss: number;
  readonly options: readonly JobOption[];
}

export interface BlockedJob {
  /** SceneJob id. */
  readonly job: string;
  readonly why: Blocked;
}

export interface Events {
  readonly events: readonly Event[];
  /** Troubles that nothing on the table does anything about, and their loss together. */
  readonly hopeless: readonly Trouble[];
  readonly fixedLoss: number;
  readonly blocked: ReadonlyMap<string, readonly BlockedJob[]>;
  readonly demand: ReadonlyMap<string, number>;
}

/** What may happen, and every way to put it right (M4, M5). */
export function eventsOf(scene: Scene, writer: NeedWriter, stock: Stock): Events {
  const jobs = new Map(scene.jobs.map((job) => [job.id, job]));
  const jobsOf = (trouble: Trouble): readonly SceneJob[] =>
    trouble.jobs.map((id) => {
      const job = jobs.get(id);
      if (job === undefined)
        throw new Error(`${trouble.id} names the job ${id}, which the scene does not have`);
      return job;
    });
  const inReach = (trouble: Trouble) =>
    jobsOf(trouble).filter((job) => blockedBy(job, trouble, scene.crew.count) === null);
  const best = bestGrades(scene, writer);
  const demand = demandOn(scene.trouble, inReach, (trouble, job) => {
    const grade = best.get(job.id) ?? null;
    return grade === null ? 0 : toolChance(job, trouble, grade);
  });

  const merged = new Map<string, Trouble[]>();
  const optionsOf = new Map<string, readonly JobOption[]>();
  const hopeless: Trouble[] = [];
  const blocked = new Map<string, readonly BlockedJob[]>();
  for (const trouble of scene.trouble) {
    const out = jobsOf(trouble).flatMap((job) => {
      const why = blockedBy(job, trouble, scene.crew.count);
      return why === null ? [] : [{ job: job.id, why }];
    });
    if (out.length > 0) blocked.set(trouble.id, out);
    const options = inReach(trouble).flatMap((job) => jobOptions(writer, stock, demand, trouble, job));
    if (options.length === 0) {
      hopeless.push(trouble);
      continue;
    }
    optionsOf.set(trouble.id, options);
    const key = likeness(trouble, options);
    const same = merged.get(key);
    if (same === undefined) merged.set(key, [trouble]);
    else same.push(trouble);
  }
  return {
    events: [...merged.values()].map((troubles) => eventOf(troubles, optionsOf)),
    hopeless,
    fixedLoss: hopeless.reduce((sum, trouble) => sum + inScoreUnits(trouble.expected), 0),
    blocked,
    demand,
  };
}

/** Best grade of every job with all that is owned or for sale, stock granted; null when something is missing altogether. */
function bestGrades(scene: Scene, writer: NeedWriter): ReadonlyMap<string, Grade | null> {
  const needs = scene.jobs.map((job) => GRADES.map((grade) => ({ grade, need: writer.job(job, grade) })));
  const met = writer.graph.metBy((index) => isToBeHad(scene.pieces[index]));
  return new Map(
    scene.jobs.map((job, j) => {
      const possible = needs[j]?.find(({ need }) => need !== null && met[need] === true);
      return [job.id, possible?.grade ?? null];
    }),
  );
}

/** A copy that is kept only to ask what it would be worth once made ready is neither owned nor for sale. */
function isToBeHad(piece: ScenePiece | undefined): boolean {
  return piece !== undefined && (piece.owned || piece.cents !== null || piece.bundles.length > 0);
}

/**
 * One failure at several distances of help merges where the same jobs are trusted at each: the options' chances are then the
 * same, so whichever is best for one is best for all, and gains may be added.
 */
function likeness(trouble: Trouble, options: readonly JobOption[]): string {
  return `${trouble.failure} ${options.map(({ needs, chance }) => `${needs.join(',')}=${chance}`).join(' ')}`;
}

function eventOf(troubles: readonly Trouble[], optionsOf: ReadonlyMap<string, readonly JobOption[]>): Event {
  const lists = troubles.map((trouble) => optionsOf.get(trouble.id) ?? []);
  const [first = []] = lists;
  const sum = (of: (index: number) => number) => troubles.reduce((total, _, index) => total + of(index), 0);
  return {
    id: troubles.map((trouble) => trouble.id).join(' + '),
    troubles,
    loss: sum((index) => inScoreUnits(troubles[index]?.expected ?? 0)),
    options: first.map((option, o) => ({ ...option, gain: sum((index) => lists[index]?.[o]?.gain ?? 0) })),
  };
}
