import type { KitState } from '@waymend/core/choosing/kit-state';
import { stillLost } from '../explain/at-real-mass.ts';
import type { Reading } from '../explain/reading.ts';
import type { OpenByGroup } from './band.ts';

/** Expected events that the kit in `state` leaves open, by group. `ratio`: by failure, its rate over the one planned with. */
export function openByGroup(
  reading: Reading,
  state: KitState,
  ratio: ReadonlyMap<string, number> = new Map(),
): OpenByGroup {
  const open = new Map<string, number>();
  for (const { trouble, share } of stillLost(reading, state)) {
    const expected = trouble.expected * share * (ratio.get(trouble.failure) ?? 1);
    open.set(trouble.group, (open.get(trouble.group) ?? 0) + expected);
  }
  return open;
}

/** The kit of these pieces, in the problem that is read. Pieces that the problem does not know are left out. */
export function carry(state: KitState, reading: Reading, ids: Iterable<string>): KitState {
  for (const id of ids) {
    const piece = reading.indexOf.get(id);
    if (piece !== undefined) state.carry(piece);
  }
  return state;
}
