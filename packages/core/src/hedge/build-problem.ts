import type { Bundle, LimitRow, NeedIndex, Piece, Problem, TroubleEvent } from '../choosing/problem.ts';
import { SCORE_UNIT } from '../choosing/problem.ts';
import { compile } from '../choosing/compile.ts';
import { KitState } from '../choosing/kit-state.ts';
import { Bench } from './bench.ts';
import { functionNeed } from './function-need.ts';
import { jointNeed } from './joint-need.ts';
import type { Blocked, OptionMeaning } from './job-options.ts';
import { blockedBy, jobOptions, tableChance } from './job-options.ts';
import { limitRows } from './limit-rows.ts';
import type { GradedNeed } from './need-pool.ts';
import { NeedPool } from './need-pool.ts';
import type { FunctionNeed, Scene, SceneJob } from '../repairing/scene.ts';
import { StockRoom } from './stock-room.ts';
import { Trains } from './turn-way.ts';

/** A choosing problem, and what its numbers stand for. */
export interface BuiltProblem {
  readonly problem: Problem;
  /** Each need in words. */
  readonly needWords: readonly string[];
  /** By event: the trouble's id, and what each of its options is. */
  readonly events: readonly { readonly trouble: string; readonly options: readonly OptionMeaning[] }[];
  /** By trouble id: jobs that would answer it but are out of this crew's or this distance's reach. */
  readonly blocked: ReadonlyMap<string, readonly { readonly job: string; readonly why: Blocked }[]>;
  /** Floor functions that nothing on the table gives (M7). */
  readonly unmetFloor: readonly FunctionNeed[];
  /** Must-do jobs that nothing on the table can do. */
  readonly impossibleJobs: readonly string[];
  /** Needs of each job at each grade, for explanations. */
  readonly jobNeeds: ReadonlyMap<string, readonly GradedNeed[]>;
}

/** The choosing problem of a scene (M2 to M7). Throws only on a scene that names what it does not have. */
export function buildProblem(scene: Scene): BuiltProblem {
  const pool = new NeedPool();
  const bench = new Bench(scene.pieces);
  const jobNeeds = needsOfJobs(scene, pool, bench);
  const jobs = new Map(scene.jobs.map((j) => [j.id, j]));
  const stock = new StockRoom(pool, scene.pieces, demandsOf(scene, jobs, jobNeeds, metByTable(scene, pool)));

  const events: TroubleEvent[] = [];
  const meanings: { trouble: string; options: readonly OptionMeaning[] }[] = [];
  const blocked = new Map<string, { job: string; why: Blocked }[]>();
  let fixedLoss = 0;
  for (const trouble of scene.trouble) {
    const loss = Math.round(trouble.expected / SCORE_UNIT);
    const found = trouble.jobs.flatMap((id) => {
      const job = jobOf(jobs, id);
      const why = blockedBy(job, trouble, scene.crew.count);
      if (why === null) return jobOptions(job, trouble, jobNeeds.get(id) ?? [], stock);
      blocked.set(trouble.id, [...(blocked.get(trouble.id) ?? []), { job: id, why }]);
      return [];
    });
    if (found.length === 0) {
      fixedLoss += loss;
      continue;
    }
    events.push({ id: trouble.id, loss, options: found.map((f) => f.option) });
    meanings.push({ trouble: trouble.id, options: found.map((f) => f.meaning) });
  }

  const must: NeedIndex[] = [];
  const unmetFloor: FunctionNeed[] = [];
  for (const need of scene.floor) {
    const affordable = affordableNeed(scene, need, pool);
    if (affordable === null) unmetFloor.push(need);
    else must.push(affordable);
  }
  const impossibleJobs: string[] = [];
  for (const id of scene.mustDo) {
    const needs = mustDoNeeds(scene, id, jobNeeds, pool, stock);
    if (needs === null) impossibleJobs.push(id);
    else must.push(needs);
  }
  const bundles = scene.bundles.map(
    ({ id, cents, caseGrams, caseMillilitres, carry, owned }): Bundle => ({
      id,
      cents,
      caseGrams,
      caseMillilitres,
      carry,
      owned,
    }),
  );
  return {
    problem: {
      pieces: piecesOf(scene),
      bundles,
      needs: pool.needs,
      events,
      limits: limitRows(scene),
      must,
      fixedLoss,
    },
    needWords: pool.words,
    events: meanings,
    blocked,
    unmetFloor,
    impossibleJobs,
    jobNeeds,
  };
}

function needsOfJobs(scene: Scene, pool: NeedPool, bench: Bench): ReadonlyMap<string, readonly GradedNeed[]> {
  const trains = new Trains(pool, bench);
  const joints = new Map(scene.joints.map((j) => [j.id, j]));
  const turned = new Map<string, GradedNeed>();
  const done = new Map<string, GradedNeed>();
  const out = new Map<string, readonly GradedNeed[]>();
  for (const job of scene.jobs) {
    out.set(
      job.id,
      job.needs.map((need) => {
        if (need.kind === 'turn') {
          const known = turned.get(need.joint);
          if (known !== undefined) return known;
          const joint = joints.get(need.joint);
          if (joint === undefined)
            throw new Error(`Job ${job.id} turns ${need.joint}, which the scene does not have`);
          const made = jointNeed(pool, bench, trains, joint, scene.crew);
          turned.set(need.joint, made);
          return made;
        }
        const key = JSON.stringify([need.fn, need.of, need.amount, need.count, need.safety]);
        const made = done.get(key) ?? functionNeed(pool, bench, need, scene.together);
        done.set(key, made);
        return made;
      }),
    );
  }
  return out;
}

/**
 * Expected demand on each stock (M5): every trouble that might use it asks for its expected events times the best chance, with
 * everything on the table, of the jobs that use it. Only repairs that succeed use a part up, which makes a single user exact.
 */
function demandsOf(
  scene: Scene,
  jobs: ReadonlyMap<string, SceneJob>,
  needs: ReadonlyMap<string, readonly GradedNeed[]>,
  met: (need: NeedIndex) => boolean,
): ReadonlyMap<string, number> {
  const total = new Map<string, number>();
  for (const trouble of scene.trouble) {
    const most = new Map<string, number>();
    for (const id of trouble.jobs) {
      const job = jobOf(jobs, id);
      if (job.uses.length === 0 || blockedBy(job, trouble, scene.crew.count) !== null) continue;
      const p = tableChance(job, trouble, needs.get(id) ?? [], met);
      for (const { of } of job.uses) most.set(of, Math.max(most.get(of) ?? 0, p));
    }
    for (const [of, p] of most) total.set(of, (total.get(of) ?? 0) + trouble.expected * p);
  }
  return total;
}

/** Which needs everything on the table meets: owned or for sale, but not what is only kept to ask "what if it were charged". */
function metByTable(scene: Scene, pool: NeedPool): (need: NeedIndex) => boolean {
  const all = {
    pieces: piecesOf(scene),
    bundles: [],
    needs: pool.needs,
    events: [],
    limits: [],
    must: [],
    fixedLoss: 0,
  };
  const state = new KitState(compile(all));
  scene.pieces.forEach((p, i) => {
    if (p.owned || p.cents !== null || p.bundles.length > 0) state.carry(i);
  });
  return (need) => state.needMet(need);
}

function jobOf(jobs: ReadonlyMap<string, SceneJob>, id: string): SceneJob {
  const job = jobs.get(id);
  if (job === undefined) throw new Error(`A trouble names the job ${id}, which the scene does not have`);
  return job;
}

/** The floor asks only for what is owned, or could be bought within the budget by itself (M7). */
function affordableNeed(scene: Scene, need: FunctionNeed, pool: NeedPool): NeedIndex | null {
  const within = scene.pieces.map((p) => {
    const bundled = scene.bundles.some(
      (b) => p.bundles.includes(b.id) && (b.owned || b.cents <= scene.limits.cents),
    );
    const had = p.owned || bundled || (p.cents !== null && p.cents <= scene.limits.cents);
    return had && p.pin !== 'never' ? p : { ...p, offers: [] };
  });
  return functionNeed(pool, new Bench(within), need, scene.together)['last-resort'];
}

/** One need that stands for "this job can be done somehow": any of its positions, at any grade, with its parts once. */
function mustDoNeeds(
  scene: Scene,
  id: string,
  jobNeeds: ReadonlyMap<string, readonly GradedNeed[]>,
  pool: NeedPool,
  stock: StockRoom,
): NeedIndex | null {
  const ways = scene.jobs
    .filter((j) => j.job === id && !j.expedient && j.bestSkill >= j.skill && scene.crew.count >= j.people)
    .flatMap((job) => {
      const needs = (jobNeeds.get(job.id) ?? []).map((n) => n['last-resort']);
      const [level] = stock.levels(job);
      if (level === undefined || needs.some((n) => n === null)) return [];
      return [
        {
          pieces: [],
          needs: [...needs.flatMap((n) => (n === null ? [] : [n])), ...level.map((l) => l.need)],
        },
      ];
    });
  return pool.any(ways, `do ${id}`);
}

function piecesOf(scene: Scene): readonly Piece[] {
  const bundleAt = new Map(scene.bundles.map((b, i) => [b.id, i]));
  return scene.pieces.map((p): Piece => {
    const bundles = p.bundles.flatMap((id) => bundleAt.get(id) ?? []);
    return {
      id: p.id,
      grams: p.grams,
      millilitres: p.millilitres,
      cents: p.owned ? 0 : p.cents,
      ...(p.pin === undefined ? {} : { pin: p.pin }),
      ...(bundles.length === 0 ? {} : { bundles }),
      owned: p.owned,
    };
  });
}
