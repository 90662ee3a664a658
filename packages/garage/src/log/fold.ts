import type { Garage } from '../record/schema.ts';
import type { Change } from './change.ts';
import type { Conflict } from './conflict.ts';
import type { Check, Problem } from './log.ts';
import { Log } from './log.ts';

export interface Folded {
  readonly garage: Garage;
  readonly conflicts: readonly Conflict[];
  readonly problems: readonly Problem[];
}

/** What a set of changes says, whatever their order and however often each is there (M15). */
export function fold(changes: Iterable<Change>, check?: Check): Folded {
  const log = new Log(check);
  log.add(changes);
  return { garage: log.garage, conflicts: log.conflicts, problems: log.problems };
}
