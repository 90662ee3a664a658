import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import { changeBelonging } from '@waymend/garage/edit';
import type { Garage } from '@waymend/garage/record/schema';
import { takeBack } from '@waymend/garage/road/loans';
import { recordCare } from '@waymend/garage/road/notes';
import { mendForGood } from '@waymend/garage/road/repairs';
import type { DueAnswer, ReadyAnswer } from '@waymend/planner/answer/ready-answer';

export type ReadyTask = ReadyAnswer['tasks'][number];

/** What one press does to a task; 'charge' asks first how full it is, 'go' leads to another sheet. */
export type TaskAct =
  | { readonly kind: 'care' | 'charge'; readonly rules: readonly string[] }
  | { readonly kind: 'mended' | 'tried' | 'loan-back' | 'put-right' }
  | { readonly kind: 'go'; readonly to: string; readonly act: 'count' | 'gaps' | 'belongings' }
  | { readonly kind: 'none' };

const NOW: ReadonlySet<DueAnswer['when']> = new Set(['overdue', 'before-leaving', 'on-trip']);

/** The dues that stand behind a task of care. */
export function duesOfTask(task: ReadyTask, dues: readonly DueAnswer[]): readonly DueAnswer[] {
  return task.kind === 'care'
    ? dues.filter((due) => due.thing === (task.about ?? '') && NOW.has(due.when))
    : [];
}

/** What can be pressed for a task: nothing is offered that would not put it right. */
export function actOf(task: ReadyTask, ready: Pick<ReadyAnswer, 'dues'>, garage: Garage): TaskAct {
  switch (task.kind) {
    case 'care': {
      const dues = duesOfTask(task, ready.dues);
      // A date that is past stays past: only a new thing cures it.
      const rules = [...new Set(dues.filter(({ kind }) => kind !== 'expiry').map(({ rule }) => rule))];
      if (rules.length === 0) return { kind: 'go', to: '/garage/belongings', act: 'belongings' };
      return { kind: dues.some(({ kind }) => kind === 'charge') ? 'charge' : 'care', rules };
    }
    case 'muster':
      return { kind: 'go', to: `/bags/muster/${encodeURIComponent(task.about ?? '')}`, act: 'count' };
    case 'repair':
      return { kind: 'mended' };
    case 'loan':
      return { kind: 'loan-back' };
    case 'incomplete':
      return { kind: 'tried' };
    case 'unready':
      return garage.belongings[task.about ?? '']?.state === 'expired'
        ? { kind: 'go', to: '/garage/belongings', act: 'belongings' }
        : { kind: 'put-right' };
    case 'floor':
      return { kind: 'go', to: '/kit/gaps', act: 'gaps' };
    case 'look':
    case 'recent-work':
      return { kind: 'none' };
  }
}

/** Records that care was taken today, rule by rule; `ids` gives the id of each mark. */
export function careToday(
  garage: Garage,
  task: ReadyTask,
  rules: readonly string[],
  mark: { readonly on: string; readonly chargePct?: number },
  ids: readonly string[],
): Result<Garage> {
  let next = garage;
  for (const [n, rule] of rules.entries()) {
    const id = ids[n];
    if (id === undefined) continue;
    const done = recordCare(next, {
      id,
      rule,
      ...mark,
      ...(task.about === null ? {} : { belonging: task.about }),
    });
    if (!done.ok) return done;
    next = done.value;
  }
  return ok(next);
}

/** What the other presses record. */
export function putRight(garage: Garage, task: ReadyTask, act: TaskAct['kind'], on: string): Result<Garage> {
  const about = task.about ?? '';
  switch (act) {
    case 'mended':
      return mendForGood(garage, about, on);
    case 'tried':
    case 'put-right':
      return changeBelonging(garage, about, { state: 'ready' });
    case 'loan-back': {
      const loan = Object.entries(garage.loans).find(
        ([, { belonging, backOn }]) => belonging === about && backOn === undefined,
      );
      return loan === undefined
        ? changeBelonging(garage, about, { state: 'ready' })
        : takeBack(garage, loan[0], on);
    }
    default:
      return ok(garage);
  }
}
