import type { NeedIndex, Piece, PieceIndex, Problem } from '../choosing/problem.ts';
import type { OpeningList } from '../fastening/opening.ts';
import { RECALLED_OPENINGS } from '../fastening/opening.ts';
import type { Result } from '../result.ts';
import { ok } from '../result.ts';
import { floorOf, mustDoNeeds } from './duties.ts';
import type { BlockedJob, Event, Events } from './events.ts';
import { eventsOf } from './events.ts';
import { GRADES } from './grade.ts';
import type { OptionMeaning } from './job-options.ts';
import { limitRows } from './limits.ts';
import { NeedWriter } from './need-writer.ts';
import { packed } from './packed.ts';
import type { FunctionNeed, Grade, Scene, SceneJob, ScenePiece, Trouble } from './scene.ts';
import { Stock } from './stock.ts';

/** What a need stands for. */
export interface NeedMeaning {
  /** In plain words; several where different things come to the same need. Empty for mere parts of others. */
  readonly words: readonly string[];
  /** Joints it undoes, and at which grade or better. */
  readonly turns: readonly { readonly joint: string; readonly grade: Grade }[];
}

/** A need at each grade or better, where the problem holds it. */
export type NeedsByGrade = Readonly<Partial<Record<Grade, NeedIndex>>>;

/** The choosing problem of a scene, and the way back from its numbers to the trade's words. */
export interface BuiltProblem {
  readonly problem: Problem;
  readonly scene: Scene;
  /** By piece index: the scene's own order. */
  readonly pieces: readonly ScenePiece[];
  readonly indexOf: ReadonlyMap<string, PieceIndex>;
  /** By need index. */
  readonly needs: readonly NeedMeaning[];
  /** By option number, through all events; the same by label. */
  readonly options: readonly OptionMeaning[];
  readonly byLabel: ReadonlyMap<string, OptionMeaning>;
  /** By event index: the troubles merged into it. */
  readonly troubles: readonly (readonly Trouble[])[];
  /** Troubles without an event: nothing on the table does anything about them. */
  readonly hopeless: readonly Trouble[];
  /** By trouble id: jobs that the people, or the distance to help, put out of reach. */
  readonly blocked: ReadonlyMap<string, readonly BlockedJob[]>;
  /** Of the floor: what must be met, and what nothing owned or affordable gives. */
  readonly floor: ReadonlyMap<NeedIndex, FunctionNeed>;
  readonly unmetFloor: readonly FunctionNeed[];
  /** Tools of each SceneJob that answers something here, by its id, and of each joint, by grade. */
  readonly jobs: ReadonlyMap<string, NeedsByGrade>;
  readonly joints: ReadonlyMap<string, NeedsByGrade>;
  /** Expected demand on each stock word (M5). */
  readonly demand: ReadonlyMap<string, number>;
}

/**
 * Turns a scene into the choosing problem: fit, ways, grades, jobs, stock, limits, floor and pins (M2 to M7). Refuses only
 * must-do jobs that no kit makes possible (`must-do-unknown`, `must-do-skill`, `must-do-people`).
 *
 * @param openings What tool openings are; remembered where nobody passes the list of ISO 691 that was read.
 */
export function buildProblem(scene: Scene, openings: OpeningList = RECALLED_OPENINGS): Result<BuiltProblem> {
  const writer = new NeedWriter(scene, openings);
  const stock = new Stock(scene.pieces);
  const events = eventsOf(scene, writer, stock);
  const mustDo = mustDoNeeds(scene, writer, stock);
  if (!mustDo.ok) return mustDo;
  const floor = floorOf(scene, writer);
  const must = [...new Set([...floor.must.map((m) => m.need), ...mustDo.value])];
  const { needs, renumbered } = packed(writer.graph, [
    ...must,
    ...events.events.flatMap((event) => event.options.flatMap((option) => option.needs)),
  ]);
  const anew = (need: NeedIndex): NeedIndex => {
    const index = renumbered.get(need);
    if (index === undefined) throw new Error(`need ${need} was left out`);
    return index;
  };
  const byLabel = new Map<string, OptionMeaning>();
  const problem: Problem = {
    ...piecesOf(scene),
    needs,
    events: events.events.map((event) => ({
      id: event.id,
      loss: event.loss,
      options: event.options.map(({ needs: asked, gain, ...meaning }) => {
        const label = labelOf(event, meaning);
        byLabel.set(label, meaning);
        return { needs: asked.map(anew), gain, label };
      }),
    })),
    limits: limitRows(scene),
    must: must.map(anew),
    fixedLoss: events.fixedLoss,
  };
  return ok({
    problem,
    scene,
    pieces: scene.pieces,
    indexOf: new Map(scene.pieces.map((piece, index) => [piece.id, index])),
    options: events.events.flatMap((event) => event.options.map(meaningOf)),
    byLabel,
    ...meanings(scene, events, writer, renumbered),
    ...reasons(events),
    floor: new Map(floor.must.map((m) => [anew(m.need), m.floor])),
    unmetFloor: floor.unmet,
  });
}

function piecesOf(scene: Scene): Pick<Problem, 'pieces' | 'bundles'> {
  const bundleIndex = new Map(scene.bundles.map((bundle, index) => [bundle.id, index]));
  const pieces = scene.pieces.map((piece): Piece => {
    const bundles = piece.bundles.map((id) => {
      const index = bundleIndex.get(id);
      if (index === undefined)
        throw new Error(`${piece.id} is in the set ${id}, which the scene does not have`);
      return index;
    });
    return {
      id: piece.id,
      grams: piece.grams,
      millilitres: piece.millilitres,
      cents: piece.cents,
      owned: piece.owned,
      ...(piece.pin === undefined ? {} : { pin: piece.pin }),
      ...(bundles.length === 0 ? {} : { bundles }),
    };
  });
  const bundles = scene.bundles.map(({ id, cents, caseGrams, caseMillilitres, carry, owned }) => ({
    id,
    cents,
    caseGrams,
    caseMillilitres,
    carry,
    owned,
  }));
  return { pieces, bundles };
}

/** 'shock-dead@rear~far | SS-04@rear | with-care | P-SHOCK x2'. */
function labelOf(event: Event, { job, grade, stock }: OptionMeaning): string {
  return [event.id, job.id, grade, ...stock.map(({ of, times }) => `${of} x${times}`)].join(' | ');
}

function meaningOf({ job, grade, stock, chance }: OptionMeaning): OptionMeaning {
  return { job, grade, stock, chance };
}

function reasons(events: Events): Pick<BuiltProblem, 'troubles' | 'hopeless' | 'blocked' | 'demand'> {
  const { hopeless, blocked, demand } = events;
  return { troubles: events.events.map((event) => event.troubles), hopeless, blocked, demand };
}

function meanings(
  scene: Scene,
  { events }: Events,
  writer: NeedWriter,
  renumbered: ReadonlyMap<NeedIndex, NeedIndex>,
): Pick<BuiltProblem, 'needs' | 'jobs' | 'joints'> {
  const byGrade = (find: (grade: Grade) => NeedIndex | null): NeedsByGrade => {
    const found: Partial<Record<Grade, NeedIndex>> = {};
    for (const grade of GRADES) {
      const need = find(grade);
      const index = need === null ? undefined : renumbered.get(need);
      if (index !== undefined) found[grade] = index;
    }
    return found;
  };
  const answering = new Set(events.flatMap((event) => event.options.map((option) => option.job)));
  const needed = (job: SceneJob) => answering.has(job) || scene.mustDo.includes(job.job);
  const jobs = new Map(
    scene.jobs.filter(needed).map((job) => [job.id, byGrade((grade) => writer.job(job, grade))]),
  );
  const joints = new Map(
    writer.turnedJoints().map((joint) => [joint, byGrade((grade) => writer.turn(joint, grade))]),
  );
  const turns = new Map<NeedIndex, { joint: string; grade: Grade }[]>();
  for (const [joint, needs] of joints) {
    for (const grade of GRADES) {
      const need = needs[grade];
      if (need !== undefined) turns.set(need, [...(turns.get(need) ?? []), { joint, grade }]);
    }
  }
  const needs = [...renumbered].map(([old, index]) => ({
    words: writer.graph.wordsOf(old),
    turns: turns.get(index) ?? [],
  }));
  return { needs, jobs, joints };
}
