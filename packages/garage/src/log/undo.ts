import type { Change } from './change.ts';
import { EXISTS } from './change.ts';
import type { Log } from './log.ts';
import type { Author } from './pen.ts';
import { Pen } from './pen.ts';
import { sameValue } from './same-value.ts';
import { standingIn } from './standing.ts';

/**
 * New changes that take one step back; undoing those is the redo. Only what still stands is taken back: where somebody has written
 * something else since, that stays. A step that settled a conflict gives the conflict back. Empty when nothing of the step stands.
 */
export function undoOf(stepId: string, log: Log, author: Author): readonly Change[] {
  const pen = new Pen(author, stepId);
  const step = log.step(stepId);
  if (step === undefined) return [];
  const standing = standingIn(log);
  const births = new Map<string, Change>();
  const leaving = new Set<string>();
  for (const change of step.changes) {
    if (change.field !== EXISTS || standing(change) === undefined) continue;
    births.set(change.entity, change);
    const first = change.value === true && change.replaces.length === 0;
    if (first && log.heads(change.entity, EXISTS).length === 1) leaving.add(change.entity);
  }

  const rewritten = new Map<string, readonly Change[]>();
  for (const change of step.changes) {
    if (change.field === EXISTS) continue;
    const head = standing(change);
    if (head === undefined) continue;
    // What first came into the world with the step goes with it, and needs no former value.
    if (leaving.has(change.entity) && change.replaces.length === 0) continue;
    const values = formerValues(log, change, head);
    rewritten.set(
      head.id,
      values.map((value) => pen.write(change.entity, change.field, value, [head])),
    );
  }
  for (const [entity, birth] of births) {
    const head = standing(birth);
    if (head === undefined) continue;
    const others = log.heads(entity, EXISTS).filter(({ id }) => id !== head.id);
    const there = others.length > 0 ? others.at(-1)?.value === true : birth.value !== true;
    const fields = log.fieldHeads(entity).flatMap((field) => rewritten.get(field.id) ?? [field]);
    pen.write(entity, EXISTS, there, there ? [head] : [head, ...fields]);
  }
  return pen.written;
}

/** Whether anything of a step could be taken back. */
export function canUndo(stepId: string, log: Log): boolean {
  const standing = standingIn(log);
  return log.step(stepId)?.changes.some((change) => standing(change) !== undefined) ?? false;
}

/** What a field held before a change: several values if there was a conflict; what others wrote meanwhile, if they did. */
function formerValues(log: Log, change: Change, head: Change): readonly unknown[] {
  const others = log.heads(change.entity, change.field).filter(({ id }) => id !== head.id);
  const instead = others.at(-1);
  if (instead !== undefined) return [instead.value];
  const values: unknown[] = [];
  for (const id of change.replaces) {
    const former = log.change(id);
    if (former?.field !== change.field) continue;
    if (!values.some((value) => sameValue(value, former.value))) values.push(former.value);
  }
  return values.length === 0 ? [null] : values;
}
