import type {
  StowBag,
  StowBerth,
  StowPiece,
  StowPocket,
  StowProblem,
  Stowage,
} from '@waymend/core/stowing/stow-problem';

/** A piece with everything that it lies in, looked up by id. */
export interface Lain {
  readonly piece: StowPiece;
  readonly bag: StowBag | null;
  readonly pocket: StowPocket | null;
  readonly berth: StowBerth;
}

export interface LookedUp {
  readonly lain: readonly Lain[];
  /** Pieces for which no place was found. */
  readonly left: readonly StowPiece[];
  /** Berth of each bag that holds something. */
  readonly berthOf: ReadonlyMap<string, StowBerth>;
  readonly faults: readonly string[];
}

/** Reads a stowage back: every piece once, every id known, a bag in one berth. */
export function lookUp(problem: StowProblem, stowage: Stowage): LookedUp {
  const faults: string[] = [];
  const lain: Lain[] = [];
  const left: StowPiece[] = [];
  const berthOf = new Map<string, StowBerth>();
  for (const { bag, berth } of stowage.bags) {
    const at = problem.berths.find((b) => b.id === berth);
    if (at === undefined || !problem.bags.some((b) => b.id === bag))
      faults.push(`Bag ${bag} in ${berth} is not known.`);
    else if (berthOf.has(bag)) faults.push(`Bag ${bag} is in two berths.`);
    else berthOf.set(bag, at);
  }
  const seen = new Set<string>();
  for (const place of stowage.places) {
    const piece = problem.pieces.find((p) => p.id === place.piece);
    if (piece === undefined || seen.has(place.piece)) {
      faults.push(`${place.piece} is stowed ${piece === undefined ? 'and not there' : 'twice'}.`);
      continue;
    }
    seen.add(place.piece);
    const berth = problem.berths.find((b) => b.id === place.berth);
    if (berth === undefined) {
      left.push(piece);
      if (place.bag !== null) faults.push(`${place.piece} is in a bag that rides nowhere.`);
      continue;
    }
    const bag = problem.bags.find((b) => b.id === place.bag) ?? null;
    const pocket = bag?.pockets.find((p) => p.id === place.pocket) ?? null;
    if ((place.bag !== null && bag === null) || (place.pocket !== null && pocket === null))
      faults.push(`${place.piece} is in a bag or pocket that is not there.`);
    if (bag !== null && berthOf.get(bag.id) !== berth)
      faults.push(`${place.piece} and its bag are in two berths.`);
    lain.push({ piece, bag, pocket, berth });
  }
  for (const piece of problem.pieces) if (!seen.has(piece.id)) faults.push(`${piece.id} is forgotten.`);
  return { lain, left, berthOf, faults };
}

export function grouped<T>(
  list: readonly T[],
  key: (item: T) => string | null,
): ReadonlyMap<string, readonly T[]> {
  const out = new Map<string, T[]>();
  for (const item of list) {
    const word = key(item);
    if (word === null) continue;
    const there = out.get(word);
    if (there === undefined) out.set(word, [item]);
    else there.push(item);
  }
  return out;
}

export function total<T>(list: readonly T[], of: (item: T) => number): number {
  return list.reduce((sum, item) => sum + of(item), 0);
}
