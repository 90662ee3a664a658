import type { NeedIndex, Option } from '../choosing/problem.ts';
import { SCORE_UNIT } from '../choosing/problem.ts';
import { kappa } from '../choosing/poisson.ts';
import { GRADE_FACTOR, GRADES } from './grade.ts';
import type { GradedNeed } from './need-pool.ts';
import type { Grade, SceneJob, Trouble } from '../repairing/scene.ts';
import type { StockRoom } from './stock-room.ts';

/** What an option of the problem stands for. */
export interface OptionMeaning {
  readonly job: string;
  readonly grade: Grade;
  /** Jobs' worth of each stock asked for; empty when the job uses nothing up. */
  readonly stock: readonly { readonly of: string; readonly times: number }[];
  /** Chance that it restores the vehicle, stock counted (M4, M5). */
  readonly chance: number;
}

export type Blocked = 'skill' | 'people' | 'trust';

/** Why this crew cannot answer this trouble with this job, or null. */
export function blockedBy(job: SceneJob, trouble: Trouble, crewCount: number): Blocked | null {
  if (job.bestSkill < job.skill) return 'skill';
  if (crewCount < job.people) return 'people';
  return job.trusted > 0 && job.trusted >= trouble.help ? null : 'trust';
}

/** Best chance of a job with everything on the table and ample stock; 0 when nothing there does it. */
export function tableChance(
  job: SceneJob,
  trouble: Trouble,
  needs: readonly GradedNeed[],
  met: (need: NeedIndex) => boolean,
): number {
  const grade = GRADES.find((g) => needs.every((n) => n[g] !== null && met(n[g])));
  return grade === undefined ? 0 : trouble.restored * GRADE_FACTOR[grade] * job.chanceFactor;
}

/** Options of one job against one trouble: a grade each, and for what it uses up a level of stock each (M4, M5). */
export function jobOptions(
  job: SceneJob,
  trouble: Trouble,
  needs: readonly GradedNeed[],
  stock: StockRoom,
): readonly { readonly option: Option; readonly meaning: OptionMeaning }[] {
  const loss = Math.round(trouble.expected / SCORE_UNIT);
  const out: { option: Option; meaning: OptionMeaning }[] = [];
  let last: string | null = null;
  for (const grade of GRADES) {
    const at = needs.map((n) => n[grade]);
    const key = at.join(',');
    if (at.some((n) => n === null) || key === last) continue;
    last = key;
    const tools = at.flatMap((n): NeedIndex[] => (n === null ? [] : [n]));
    const p = trouble.restored * GRADE_FACTOR[grade] * job.chanceFactor;
    let before = -1;
    for (const level of stock.levels(job)) {
      const spent = level.reduce((sum, l) => sum + kappa(l.times, stock.demand(l.of)), 0);
      const chance = p * (1 - Math.min(1, spent));
      const gain = Math.min(loss, Math.round((trouble.expected * chance) / SCORE_UNIT));
      // More of the same that changes nothing by a single score unit is not worth an option.
      if (gain <= 0 || gain === before) continue;
      before = gain;
      const label = `${job.id} ${grade}${level.map((l) => ` ${l.of}x${l.times}`).join('')}`;
      out.push({
        option: { needs: [...new Set([...tools, ...level.map((l) => l.need)])], gain, label },
        meaning: { job: job.id, grade, stock: level.map(({ of, times }) => ({ of, times })), chance },
      });
    }
  }
  return out;
}
