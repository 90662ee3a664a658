import type { Need } from './problem.ts';

/** Whenever need a is met, need b is: it is the same, or every way of a holds all of some way of b. False: not seen to. */
export function implies(needs: readonly Need[], a: number, b: number): boolean {
  if (a === b) return true;
  const [former, later] = [needs[a], needs[b]];
  if (former?.kind !== 'any' || later?.kind !== 'any' || former.ways.length === 0) return false;
  return former.ways.every((way) =>
    later.ways.some(
      (smaller) =>
        smaller.pieces.every((p) => way.pieces.includes(p)) &&
        smaller.needs.every((n) => way.needs.includes(n)),
    ),
  );
}
