import { replaceNeed } from './draft.ts';
import type { Atom, Draft } from './draft.ts';

/** Text that is equal for equal needs: minimal ways in a fixed order, or units and their pieces. */
export function needKey(draft: Draft, n: number): string {
  const need = draft.needs[n];
  if (!need) return '';
  if (need.kind === 'any') return need.ways.map((way) => way.join(' ')).join('|');
  return `${need.units}: ${need.from.map(({ piece, units }) => `${piece} ${units}`).join('|')}`;
}

/**
 * Two needs with the same minimal ways (or the same units from the same pieces) are met by the same choices, so one
 * stands for both. Jobs on the same sizes share almost all their needs: this is the largest single reduction.
 */
export function mergeEqualNeed(draft: Draft, n: number, seen: Map<string, Atom>): boolean {
  const key = needKey(draft, n);
  const first = seen.get(key);
  if (first === undefined) {
    seen.set(key, draft.pieceCount + n);
    return false;
  }
  replaceNeed(draft, n, [first]);
  return true;
}
