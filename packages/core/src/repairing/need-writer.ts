import type { OpeningList } from '../fastening/opening.ts';
import { DriveTrains } from './drive-train.ts';
import { functionNeed } from './function-ways.ts';
import type { Holding } from './hold-ways.ts';
import { holdWays } from './hold-ways.ts';
import { jointNeed } from './joint-need.ts';
import type { Met } from './need-graph.ts';
import { NeedGraph } from './need-graph.ts';
import { functionWords, gradeWords, turnWords } from './need-words.ts';
import type { FunctionNeed, Grade, Joint, Scene, SceneJob, SceneNeed } from './scene.ts';
import { Toolbox } from './toolbox.ts';
import { turnWays } from './turn-ways.ts';
import type { Task, Turning } from './turning.ts';
import { taskOf } from './turning.ts';

interface Laid {
  readonly task: Task;
  readonly turning: Turning;
  readonly holding: Holding | null;
}

/** Writes what joints, functions and jobs of a scene ask for as needs, each once. */
export class NeedWriter {
  readonly graph = new NeedGraph();
  readonly toolbox: Toolbox;
  readonly trains: DriveTrains;
  private readonly scene: Scene;
  private readonly openings: OpeningList;
  private readonly joints: ReadonlyMap<string, Joint>;
  private readonly laid = new Map<string, Laid>();
  private readonly known = new Map<string, Met>();

  constructor(scene: Scene, openings: OpeningList) {
    this.scene = scene;
    this.openings = openings;
    this.toolbox = new Toolbox(scene.pieces);
    this.trains = new DriveTrains(this.graph, this.toolbox);
    this.joints = new Map(scene.joints.map((joint) => [joint.id, joint]));
  }

  need(need: SceneNeed, grade: Grade): Met {
    return need.kind === 'turn' ? this.turn(need.joint, grade) : this.fn(need, grade);
  }

  /** Undoing a joint at a grade or better. */
  turn(id: string, grade: Grade): Met {
    return this.once(`turn ${id}|${grade}`, () => {
      const { task, turning, holding } = this.layOut(id);
      const need = jointNeed(this, task, turning, holding, grade);
      if (need !== null) this.graph.name(need, `${turnWords(task.joint)} (${gradeWords(grade)})`);
      return need;
    });
  }

  /** Joints that some job has asked for. */
  turnedJoints(): readonly string[] {
    return [...this.laid.keys()];
  }

  /** A function at a grade or better. */
  fn(need: FunctionNeed, grade: Grade): Met {
    const { fn, of = '', amount = 0, count = 1, safety = false } = need;
    return this.once(`fn ${fn}|${of}|${amount}|${count}|${safety}|${grade}`, () => {
      const met = functionNeed(this.graph, this.toolbox, this.scene.together, need, grade);
      if (met !== null) this.graph.name(met, `${functionWords(need)} (${gradeWords(grade)})`);
      return met;
    });
  }

  /** All needs of a job at a grade or better; stock is apart. */
  job(job: SceneJob, grade: Grade): Met {
    return this.once(`job ${job.id}|${grade}`, () => {
      const met = this.graph.all(job.needs.map((need) => this.need(need, grade)));
      if (met !== null) this.graph.name(met, `${job.title} (${gradeWords(grade)})`);
      return met;
    });
  }

  private layOut(id: string): Laid {
    const known = this.laid.get(id);
    if (known !== undefined) return known;
    const joint = this.joints.get(id);
    if (joint === undefined) throw new Error(`a job turns the joint ${id}, which the scene does not have`);
    const task = taskOf(joint, this.scene.crew, this.openings);
    const holding = joint.hold === undefined ? null : holdWays(this.toolbox, task, joint.hold);
    const laid = { task, turning: turnWays(this.toolbox, task), holding };
    this.laid.set(id, laid);
    return laid;
  }

  private once(key: string, write: () => Met): Met {
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const need = write();
    this.known.set(key, need);
    return need;
  }
}
