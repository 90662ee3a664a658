import type { Conflict } from '@waymend/garage/log/conflict';
import type { StepTaken } from '@waymend/garage/log/log';
import type { Garage } from '@waymend/garage/record/schema';

/** What the screens see of the record; behind it stands the log of changes in the browser's database. */
export interface RecordState {
  readonly garage: Garage;
  /** Values that were written apart; the garage shows one of each until they are settled. */
  readonly conflicts: readonly Conflict[];
  /** Every step, oldest first. */
  readonly history: readonly StepTaken[];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** 'saved' only when the transaction has committed. */
  readonly saved: 'saved' | 'saving' | { readonly failed: string };
  /** Changes since the owner last kept a copy outside this browser. */
  readonly changesSinceCopy: number;
}

export interface GarageRecord {
  readonly getState: () => RecordState;
  readonly subscribe: (listener: () => void) => () => void;
  /** One step, undone as one; resolves when it is written. `title` says what was done, for the history. */
  readonly edit: (title: string, change: (garage: Garage) => Garage) => Promise<void>;
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  /** Puts another garage in place of the whole: a file that was opened, the demo. Undoable like any edit. */
  readonly replace: (title: string, garage: Garage) => Promise<void>;
  readonly settle: (
    title: string,
    conflict: Pick<Conflict, 'entity' | 'field'>,
    value: unknown,
  ) => Promise<void>;
  readonly noteCopyMade: () => Promise<void>;
}
