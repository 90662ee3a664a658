import { OPEN, resolve, takeAlong } from './draft.ts';
import type { Draft } from './draft.ts';
import type { Implications } from './implied.ts';
import { dropImplied } from './implied.ts';

/**
 * What `must` forces. A need with one way left has been replaced by that way, so its pieces stand in `must` directly:
 * every feasible choice carries them. Needs implied by others of `must` go (row domination). A need that cannot be met
 * makes the whole problem impossible and is reported.
 */
export function takeForced(draft: Draft, implications: Implications): void {
  const open = new Set<number>();
  for (const atom of draft.must) {
    const left = resolve(draft, [atom]);
    if (left === null) {
      const n = atom - draft.pieceCount;
      if (n >= 0 && !draft.impossible.needs.includes(n)) draft.impossible.needs.push(n);
      continue;
    }
    for (const one of left) {
      if (one < draft.pieceCount && draft.state[one] === OPEN) takeAlong(draft, one);
      else open.add(one);
    }
  }
  draft.must = dropImplied(
    implications,
    [...open].sort((a, b) => a - b),
  );
}
