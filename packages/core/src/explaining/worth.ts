import type { KitState } from '../choosing/kit-state.ts';
import type { PieceIndex } from '../choosing/problem.ts';

/** What a carried thing is worth: what would be lost if it stayed home. */
export interface Worth {
  /** Score units lost more. */
  readonly loss: number;
  /** Needs of the floor or must-do jobs would open. */
  readonly breaksMust: boolean;
  /** Options that were complete with it and are not without it, numbered through all events (compile.ts). */
  readonly optionsLost: readonly number[];
}

/** Worth of a belonging with all its carried copies (M10). `state` is left as it was. */
export function worthOf(state: KitState, pieces: readonly PieceIndex[]): Worth {
  const before = state.loss;
  const open = state.mustOpen;
  const options = state.compiled.optionGain.length;
  const complete = Uint8Array.from({ length: options }, (_, o) => (state.optionComplete(o) ? 1 : 0));
  const taken = pieces.filter((p) => state.carried[p] === 1);
  for (const p of taken) state.leave(p);
  const loss = state.loss - before;
  const breaksMust = state.mustOpen > open;
  const optionsLost: number[] = [];
  complete.forEach((was, o) => {
    if (was === 1 && !state.optionComplete(o)) optionsLost.push(o);
  });
  for (const p of taken) state.carry(p);
  return { loss, breaksMust, optionsLost };
}

/** Score units that adding these pieces to the kit would save. `state` is left as it was. */
export function gainOfAdding(state: KitState, pieces: readonly PieceIndex[]): number {
  const before = state.loss;
  const fresh = pieces.filter((p) => state.carried[p] !== 1);
  for (const p of fresh) state.carry(p);
  const gain = before - state.loss;
  for (const p of fresh) state.leave(p);
  return gain;
}
