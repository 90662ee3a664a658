import type { CompiledProblem } from '@waymend/core/choosing/compile';
import type { NeedIndex, PieceIndex } from '@waymend/core/choosing/problem';
import { SCORE_UNIT } from '@waymend/core/choosing/problem';
import type { Scene, SceneJob, ScenePiece, Trouble } from '@waymend/core/repairing/scene';

/** What an option of an event is: a job at a grade, with its chance to restore. */
export interface OptionMeaning {
  readonly job: SceneJob;
  readonly grade: 'proper' | 'with-care' | 'last-resort';
  readonly chance: number;
}

/** Why a job is out of reach for a trouble although the pieces might be there. */
export type Blocked = 'skill' | 'people' | 'trust';

/** A problem read back in the trade's words: the two-way map that every explanation needs. */
export interface Reading {
  readonly scene: Scene;
  readonly compiled: CompiledProblem;
  readonly pieces: readonly ScenePiece[];
  readonly indexOf: ReadonlyMap<string, PieceIndex>;
  /** By option number, through all events. */
  readonly options: readonly OptionMeaning[];
  /** By event: the troubles merged into it. */
  readonly troubles: readonly (readonly Trouble[])[];
  /** Troubles that have no event because nothing can be done about them, or that lost some of their jobs. */
  readonly blocked: ReadonlyMap<string, readonly { readonly job: string; readonly why: Blocked }[]>;
  /** What every trip carries (M7): needs that must be met for the floor's sake, and functions that nothing gives. */
  readonly floor: ReadonlySet<NeedIndex>;
  readonly unmetFloor: readonly { readonly fn: string }[];
}

/** Chance of driving home unaided for a loss in score units (M5). */
export function chanceOfLoss(loss: number): number {
  return Math.exp(-loss * SCORE_UNIT);
}

/** Chance that would be lost if the loss grew by `more` score units. */
export function chanceLost(loss: number, more: number): number {
  return chanceOfLoss(loss) * -Math.expm1(-more * SCORE_UNIT);
}

/**
 * Whether the owner said never. A piece that is on the table only to be named as a cure (made ready first, or sold where this
 * trip does not buy) is pinned so that no plan chooses it, but may be named.
 */
export function ownerSaysNever(piece: Pick<ScenePiece, 'id' | 'pin'>): boolean {
  return piece.pin === 'never' && !piece.id.startsWith('ready:') && !piece.id.startsWith('buy:');
}

/** Owned copies of each belonging, in record order. */
export function byBelonging(reading: Reading): ReadonlyMap<string, readonly PieceIndex[]> {
  const out = new Map<string, PieceIndex[]>();
  reading.pieces.forEach((piece, index) => {
    const list = out.get(piece.belonging);
    if (list === undefined) out.set(piece.belonging, [index]);
    else list.push(index);
  });
  return out;
}

/** Distinct jobs behind a list of option numbers, by job id, in the order met. */
export function jobsOf(
  reading: Reading,
  options: readonly number[],
): readonly { readonly id: string; readonly title: string }[] {
  const seen = new Map<string, { id: string; title: string }>();
  for (const o of options) {
    const job = reading.options[o]?.job;
    if (job !== undefined && !seen.has(job.id)) seen.set(job.id, { id: job.id, title: job.title });
  }
  return [...seen.values()];
}
