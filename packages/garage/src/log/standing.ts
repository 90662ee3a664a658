import type { Change } from './change.ts';
import type { Log } from './log.ts';
import { sameValue } from './same-value.ts';

/**
 * For a change of the log the head that still says it: itself, or one that an undo or redo has put in its place. An undo
 * stands for what was there before the step it took back, so that the step before that one can be taken back next.
 */
export function standingIn(log: Log): (change: Change) => Change | undefined {
  const origins = new Map<string, string>();
  const indexes = new Map<string, ReadonlyMap<string, readonly Change[]>>();

  /** The changes of one field in a step: one as a rule, several where the step gave a conflict back. */
  const inStep = (stepId: string, { entity, field }: Change): readonly Change[] => {
    let index = indexes.get(stepId);
    if (index === undefined) {
      index = indexed(log.step(stepId)?.changes ?? []);
      indexes.set(stepId, index);
    }
    return index.get(keyOf({ entity, field })) ?? [];
  };

  /** The id of the change that a change stands for in the end; its own when it says something new. */
  const originOf = (change: Change): string => {
    const found = origins.get(change.id);
    if (found !== undefined) return found;
    // A forged circle ends here.
    origins.set(change.id, change.id);
    const restored = change.step.undoes === undefined ? null : restoredBy(change, change.step.undoes);
    const origin = restored === null ? change.id : originOf(restored);
    origins.set(change.id, origin);
    return origin;
  };

  const restoredBy = (change: Change, undone: string): Change | null => {
    for (const id of change.replaces) {
      const replaced = log.change(id);
      if (replaced?.field !== change.field) continue;
      const said = inStep(undone, change).find(
        (other) => other.id === id || originOf(other) === originOf(replaced),
      );
      for (const formerId of said?.replaces ?? []) {
        const former = log.change(formerId);
        if (former?.field === change.field && sameValue(former.value, change.value)) return former;
      }
    }
    return null;
  };

  return (change) =>
    log
      .heads(change.entity, change.field)
      .find((head) => head.id === change.id || originOf(head) === originOf(change));
}

function indexed(changes: readonly Change[]): ReadonlyMap<string, readonly Change[]> {
  const index = new Map<string, Change[]>();
  for (const change of changes) {
    const list = index.get(keyOf(change));
    if (list === undefined) index.set(keyOf(change), [change]);
    else list.push(change);
  }
  return index;
}

function keyOf({ entity, field }: Pick<Change, 'entity' | 'field'>): string {
  return `${field}\n${entity}`;
}
