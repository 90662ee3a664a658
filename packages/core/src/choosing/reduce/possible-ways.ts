import { IN, OPEN, OUT, REPLACED, resolve } from './draft.ts';
import type { Draft } from './draft.ts';

/**
 * Ways with a piece that stays home, or a need that cannot be met, are never complete: they go. Pieces that come and
 * needs that are met ask for nothing more: they leave the ways they are in. A way left with nothing in it makes its need
 * met; a need left without ways cannot be met. For needs counted in units, pieces that come are taken off the units
 * asked. A need of `must` holds in every feasible choice, so ways and options of other needs need not ask for it again.
 * All this rewrites what "met" means in feasible choices without changing it.
 *
 * Returns whether the need is still open. Needs are visited in ascending order, so smaller ones are already rewritten.
 */
export function keepPossibleWays(draft: Draft, n: number, must: ReadonlySet<number>): boolean {
  const atom = draft.pieceCount + n;
  const need = draft.needs[n];
  if (!need || draft.state[atom] !== OPEN) return false;
  const decide = (state: number): boolean => {
    draft.state[atom] = state;
    draft.changes++;
    return false;
  };
  if (need.kind === 'enough') {
    const from = new Map<number, number>();
    let given = 0;
    for (const { piece, units } of need.from) {
      if (draft.state[piece] === IN) given += units;
      if (draft.state[piece] === IN || draft.state[piece] === OUT || units <= 0) continue;
      const one = draft.state[piece] === REPLACED ? resolve(draft, [piece])?.[0] : piece;
      if (one === undefined) given += draft.state[draft.standsFor.get(piece)?.[0] ?? 0] === IN ? units : 0;
      else from.set(one, (from.get(one) ?? 0) + units);
    }
    need.units -= given;
    need.from = [...from].sort((a, b) => a[0] - b[0]).map(([piece, units]) => ({ piece, units }));
    if (need.units <= 0) return decide(IN);
    // More than asked is no better than what is asked: smaller numbers make a tighter relaxation.
    need.from = need.from.map(({ piece, units }) => ({ piece, units: Math.min(units, need.units) }));
    return need.from.reduce((sum, { units }) => sum + units, 0) < need.units ? decide(OUT) : true;
  }
  const ways: number[][] = [];
  for (const way of need.ways) {
    const left = resolve(draft, way);
    if (!left) continue;
    const asked = left.some((one) => must.has(one)) ? left.filter((one) => !must.has(one)) : left;
    if (asked.length === 0) return decide(IN);
    ways.push(asked);
  }
  need.ways = ways;
  return ways.length === 0 ? decide(OUT) : true;
}
