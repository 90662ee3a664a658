import type { NeedIndex } from '../choosing/problem.ts';
import { SCORE_UNIT } from '../choosing/problem.ts';
import { GRADE_FACTOR, GRADES } from './grade.ts';
import { kappa } from './kappa.ts';
import type { NeedWriter } from './need-writer.ts';
import type { Grade, SceneJob, Trouble } from './scene.ts';
import type { Stock } from './stock.ts';

/** Why a job does nothing for a trouble whatever is carried. */
export type Blocked = 'skill' | 'people' | 'trust';

/** A job at a grade with so much stock: what one option of an event stands for. */
export interface OptionMeaning {
  readonly job: SceneJob;
  readonly grade: Grade;
  /** Uses aboard that the option asks for, by stock word. */
  readonly stock: readonly { readonly of: string; readonly times: number }[];
  /** Chance to restore, running out of stock counted. */
  readonly chance: number;
}

export interface JobOption extends OptionMeaning {
  readonly needs: readonly NeedIndex[];
  /** Whole score units. */
  readonly gain: number;
}

/** Why the job is out of reach for the trouble; null when it is not (M4). Made safe restores nothing. */
export function blockedBy(job: SceneJob, trouble: Trouble, people: number): Blocked | null {
  if (job.trusted <= 0 || job.trusted < trouble.help) return 'trust';
  if (job.bestSkill < job.skill) return 'skill';
  return people < job.people ? 'people' : null;
}

/** p of M4, stock granted. */
export function toolChance(job: SceneJob, trouble: Trouble, grade: Grade): number {
  return trouble.restored * GRADE_FACTOR[grade] * job.chanceFactor;
}

/** Whole score units of a loss in nepers. */
export function inScoreUnits(nepers: number): number {
  const units = Math.round(nepers / SCORE_UNIT);
  if (!Number.isSafeInteger(units) || units < 0)
    throw new Error(`${nepers} nepers cannot be counted in whole score units`);
  return units;
}

/**
 * Every option a job gives against a trouble: a grade and, for each stock it uses up, a number of uses aboard (M4, M5). Stock
 * levels are those that pieces on the table make up; a level that adds less than a score unit is left out, so the options say
 * exactly what the rule says.
 */
export function jobOptions(
  writer: NeedWriter,
  stock: Stock,
  demand: ReadonlyMap<string, number>,
  trouble: Trouble,
  job: SceneJob,
): readonly JobOption[] {
  const loss = inScoreUnits(trouble.expected);
  const options: JobOption[] = [];
  let better: NeedIndex | null = null;
  for (const grade of GRADES) {
    const tools = writer.job(job, grade);
    // The same needs at a worse grade would only be worth less.
    if (tools === null || tools === better) continue;
    better = tools;
    const chance = toolChance(job, trouble, grade);
    for (const { times, lost } of stockLevels(stock, demand, job, (trouble.expected * chance) / SCORE_UNIT)) {
      const kept = chance * (1 - Math.min(1, lost));
      const gain = Math.min(loss, inScoreUnits(trouble.expected * kept));
      if (gain <= 0) continue;
      const used = job.uses.map(({ of, units }, n) => ({ of, units, times: times[n] ?? 1 }));
      const needs = used.flatMap(({ of, units, times: n }) => {
        const need = stock.need(writer.graph, of, units, n);
        return need === null ? [] : [need];
      });
      if (needs.length < used.length) throw new Error(`${job.id}: a stock level that nothing makes up`);
      options.push({
        job,
        grade,
        stock: used.map(({ of, times: n }) => ({ of, times: n })),
        chance: kept,
        needs: [...new Set([tools, ...needs])],
        gain,
      });
    }
  }
  return withoutDominated(options);
}

/** Score units: less than any honest rounding could turn on. */
const NEGLIGIBLE = 1e-6;

interface Level {
  /** Uses of each of the job's stocks. */
  readonly times: readonly number[];
  /** Sum of the kappas. */
  readonly lost: number;
}

/** Combinations of stock levels; `worth` is the job's gain in score units when stock is ample. */
function stockLevels(
  stock: Stock,
  demand: ReadonlyMap<string, number>,
  job: SceneJob,
  worth: number,
): readonly Level[] {
  let levels: readonly Level[] = [{ times: [], lost: 0 }];
  for (const { of, units } of job.uses) {
    const wanted = demand.get(of) ?? 0;
    const steps: { readonly times: number; readonly lost: number }[] = [];
    for (const times of stock.levels(of, units)) {
      // What is lost already is far below a score unit: more stock would change nothing.
      if ((steps.at(-1)?.lost ?? 1) * worth < NEGLIGIBLE) break;
      const lost = kappa(times, wanted);
      steps.push({ times, lost });
    }
    levels = levels.flatMap((level) =>
      steps.map((step) => ({ times: [...level.times, step.times], lost: level.lost + step.lost })),
    );
  }
  return levels;
}

/** Drops options that ask for at least as much stock as another of the same tools and gain no more. */
function withoutDominated(options: readonly JobOption[]): readonly JobOption[] {
  return options.filter(
    (option) =>
      !options.some(
        (other) =>
          other !== option &&
          other.grade === option.grade &&
          other.gain >= option.gain &&
          other.stock.every(({ times }, n) => times <= (option.stock[n]?.times ?? 0)),
      ),
  );
}
