import type { PieceIndex } from '../choosing/problem.ts';
import type { OpeningList } from '../fastening/opening.ts';
import type { Puller } from '../fastening/lever.ts';
import { torqueToUndo } from '../fastening/lever.ts';
import type { NewtonMetres } from '../quantity/units.ts';
import type { TrainAsk } from './drive-train.ts';
import { trainKey } from './drive-train.ts';
import { betterOf, isAtLeast } from './grade.ts';
import { GradedPieces } from './graded.ts';
import type { Crew, Grade, Joint } from './scene.ts';

/** A joint with what it takes to undo it worked out. */
export interface Task {
  readonly joint: Joint;
  readonly torque: NewtonMetres;
  readonly puller: Puller;
  readonly openings: OpeningList;
}

export function taskOf(joint: Joint, crew: Crew, openings: OpeningList): Task {
  const puller = { stance: joint.stance, heaviest: crew.heaviest };
  return { joint, torque: torqueToUndo(joint), puller, openings };
}

/** Sockets, bits and feet that ask for the same drive train. */
export interface Driven {
  readonly ask: TrainAsk;
  readonly pieces: GradedPieces;
  /** The best grade at which the train does it with nothing on its end: a handle's square in a square plug. */
  bare: Grade | null;
}

/** What can turn one joint, by what else has to come along. */
export class Turning {
  /** One piece and a hand. */
  readonly alone = new GradedPieces();
  /** Ring wrenches that undo it when struck with a hammer. */
  readonly struck = new GradedPieces();
  /** Drifts that, struck with a hammer, turn a ring nut. */
  readonly drifts = new GradedPieces();
  private readonly byAsk = new Map<string, Driven>();

  get driven(): readonly Driven[] {
    return [...this.byAsk.values()];
  }

  drive(piece: PieceIndex, grade: Grade | null, ask: TrainAsk): void {
    if (grade !== null) this.under(ask).pieces.put(piece, grade);
  }

  bareEnd(grade: Grade | null, ask: TrainAsk): void {
    if (grade === null) return;
    const driven = this.under(ask);
    driven.bare = betterOf(driven.bare, grade);
  }

  private under(ask: TrainAsk): Driven {
    const key = trainKey(ask);
    const driven = this.byAsk.get(key) ?? { ask, pieces: new GradedPieces(), bare: null };
    this.byAsk.set(key, driven);
    return driven;
  }
}

/** Whether a bare end does it at this grade. */
export function isBareAt(driven: Driven, grade: Grade): boolean {
  return isAtLeast(driven.bare, grade);
}
