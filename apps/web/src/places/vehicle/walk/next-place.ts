import type { FittingRow } from '@waymend/planner/views/fitting-list';
import type { Walk } from '@waymend/planner/views/walk-order';
import type { SetAside } from './set-aside.ts';

/** Names a place through all changes of its record. */
export function keyOf({ place, position }: Pick<FittingRow, 'place' | 'position'>): string {
  return position === null ? place : `${place}@${position}`;
}

/** The two rounds in one line. */
export function path({ first, second }: Walk): readonly FittingRow[] {
  return [...first, ...second];
}

/** What is still to be looked at, in order: first what nobody has left, then what was skipped, last what was out of reach. */
export function stillToDo(walk: Walk, { skipped, outOfReach }: SetAside): readonly FittingRow[] {
  const open = path(walk).filter((row) => row.status !== 'measured');
  const far = new Set(outOfReach);
  const later = new Set(skipped.filter((key) => !far.has(key)));
  const left = (keys: ReadonlySet<string>) => open.filter((row) => keys.has(keyOf(row)));
  return [
    ...open.filter((row) => !later.has(keyOf(row)) && !far.has(keyOf(row))),
    ...left(later),
    ...left(far),
  ];
}
