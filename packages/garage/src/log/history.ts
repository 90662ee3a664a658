import { installationOf } from './change.ts';
import type { Log, StepTaken } from './log.ts';
import { canUndo } from './undo.ts';

export interface UndoAndRedo {
  /** The step an undo would take back, and the undo a redo would take back; null when there is none. */
  readonly undo: StepTaken | null;
  readonly redo: StepTaken | null;
}

/**
 * What undo and redo would do now, read from the log itself: the owner's own steps, made in any session of this installation, so that both
 * work across tabs and after a restart. A new step ends what could be redone. Steps of which nothing stands any more are passed over.
 */
export function undoAndRedo(log: Log, device: string): UndoAndRedo {
  const own = installationOf(device);
  const toUndo: StepTaken[] = [];
  const toRedo: StepTaken[] = [];
  for (const step of log.steps) {
    if (installationOf(step.device) !== own) continue;
    const { undoes } = step;
    if (undoes === undefined) {
      toUndo.push(step);
      toRedo.length = 0;
    } else if (takeOut(toUndo, undoes)) toRedo.push(step);
    else {
      takeOut(toRedo, undoes);
      toUndo.push(step);
    }
  }
  return { undo: lastStanding(toUndo, log), redo: lastStanding(toRedo, log) };
}

function takeOut(steps: StepTaken[], id: string): boolean {
  const at = steps.findLastIndex((step) => step.id === id);
  if (at >= 0) steps.splice(at, 1);
  return at >= 0;
}

function lastStanding(steps: readonly StepTaken[], log: Log): StepTaken | null {
  return steps.findLast(({ id }) => canUndo(id, log)) ?? null;
}
