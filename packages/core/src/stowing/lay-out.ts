import type { StowPiece, StowProblem } from './stow-problem.ts';
import type { Spot } from './spots.ts';
import { bagMillilitres, fits, isRigid, spotsOf, takes } from './spots.ts';

/**
 * A stowing problem by index, with what follows from it once and for all: which places take which piece, which berths take
 * which bag, and limits wide enough for what was put by hand (such a thing stays, and what it breaks is told).
 */
export interface Layout {
  readonly problem: StowProblem;
  readonly spots: readonly Spot[];
  /** Places a piece may lie in, by piece. */
  readonly allowed: readonly (readonly number[])[];
  /** 1 where piece x (number of places) + place is allowed. */
  readonly may: Uint8Array;
  /** 1 where a piece lies in a bag by hand: it has one allowed place. */
  readonly settled: Uint8Array;
  /** Berths a bag may ride in, by bag; one for a fixed bag. */
  readonly homes: readonly (readonly number[])[];
  /** 1 where some bag takes the piece. */
  readonly bagged: Uint8Array;
  readonly spotRoom: Float64Array;
  readonly spotLimit: Float64Array;
  readonly bagRoom: Float64Array;
  readonly bagLimit: Float64Array;
  readonly berthRoom: Float64Array;
  readonly berthLimit: Float64Array;
  /** Members of each word that things belong together by, two or more that a bag takes. */
  readonly groups: readonly (readonly number[])[];
  readonly groupsOf: readonly (readonly number[])[];
}

/**
 * Works a problem out. `standing` names the berth that each bag now stands in: then no bag may go anywhere else, and what
 * goes into which bag is all that is left to choose.
 */
export function layOut(problem: StowProblem, standing?: Int32Array): Layout {
  const spots = spotsOf(problem);
  const kept = wheelBerths(problem);
  const free = problem.berths.map((berth, h) => !berth.roof && !berth.seat && !kept.has(h));
  const berthIndex = new Map(problem.berths.map((berth, h) => [berth.id, h]));
  const packed = new Set(problem.pieces.flatMap((p) => (p.byHand?.kind === 'bag' ? [p.byHand.bag] : [])));
  const homes = problem.bags.map((bag, b) => {
    if (standing !== undefined) return [standing[b] ?? -1];
    const fixed = bag.fixedIn === null ? undefined : berthIndex.get(bag.fixedIn);
    if (fixed !== undefined) return [fixed];
    const now = bag.berth === null ? undefined : berthIndex.get(bag.berth);
    // Somebody has packed it and said where it is: it stays.
    if (now !== undefined && packed.has(bag.id)) return [now];
    const open = problem.berths.flatMap((_, h) =>
      free[h] === true || (h === now && !kept.has(h)) ? [h] : [],
    );
    return open.sort(
      (a, b) => Number(b === now) - Number(a === now) || burden(problem, a) - burden(problem, b),
    );
  });
  const allowed = problem.pieces.map((piece) => allowedFor(problem, piece, spots, free, homes, kept));
  const may = new Uint8Array(problem.pieces.length * spots.length);
  for (const [p, list] of allowed.entries()) for (const s of list) may[p * spots.length + s] = 1;
  const settled = Uint8Array.from(problem.pieces, (piece) => (piece.byHand?.kind === 'bag' ? 1 : 0));
  const bagged = Uint8Array.from(allowed, (list) => (list.some((s) => (spots[s]?.bag ?? -1) >= 0) ? 1 : 0));
  const words = new Map<string, number[]>();
  for (const [p, piece] of problem.pieces.entries())
    if (bagged[p] === 1)
      for (const word of new Set(piece.groups)) words.set(word, [...(words.get(word) ?? []), p]);
  const groups = [...words.values()].filter((members) => members.length > 1);
  const groupsOf = problem.pieces.map((_, p) =>
    groups.flatMap((members, g) => (members.includes(p) ? [g] : [])),
  );
  return {
    problem,
    spots,
    allowed,
    may,
    settled,
    homes,
    bagged,
    ...limits(problem, spots, allowed, homes),
    groups,
    groupsOf,
  };
}

/** Behind the rear axle before anything, then high, then far back: where a bag is better not set down first. */
function burden({ berths, rearAxle }: StowProblem, h: number): number {
  const berth = berths[h];
  if (berth === undefined) return Infinity;
  return 1e8 * Math.max(0, berth.x - rearAxle) + 1e4 * berth.z + berth.x;
}

/** Berths that are the spare wheel's own. */
export function wheelBerths({ berths }: StowProblem): ReadonlySet<number> {
  return new Set([...berths.keys()].filter((h) => berths[h]?.wheelOnly === true));
}

function allowedFor(
  problem: StowProblem,
  piece: StowPiece,
  spots: readonly Spot[],
  free: readonly boolean[],
  homes: readonly (readonly number[])[],
  kept: ReadonlySet<number>,
): readonly number[] {
  const { byHand } = piece;
  const all = [...spots.keys()];
  const spot = (s: number): Spot =>
    spots[s] ?? { bag: -1, pocket: -1, berth: -1, room: 0, takes: 'room', limit: 0 };
  if (byHand?.kind === 'bag') {
    const bag = problem.bags.findIndex((b) => b.id === byHand.bag);
    const pocket = problem.bags[bag]?.pockets.findIndex((p) => p.id === byHand.pocket) ?? -1;
    const inside = all.filter((s) => spot(s).bag === bag);
    const named = inside.filter((s) => byHand.pocket !== null && spot(s).pocket === pocket);
    // In the bag and nobody said where: the first place in it that takes it, or the first there is.
    const place = named[0] ?? inside.find((s) => fits(problem, piece, spot(s))) ?? inside[0];
    return place === undefined ? [] : [place];
  }
  if (byHand?.kind === 'berth') {
    const h = problem.berths.findIndex((berth) => berth.id === byHand.berth);
    return all.filter((s) => {
      const { bag, berth } = spot(s);
      if (bag < 0) return berth === h;
      const fixed = problem.bags[bag]?.fixedIn === byHand.berth;
      return piece.wheel !== true && fixed && fits(problem, piece, spot(s));
    });
  }
  return all.filter((s) => {
    const { bag, berth } = spot(s);
    const open = bag < 0 ? free[berth] === true : piece.wheel !== true && takesMore(homes[bag] ?? [], kept);
    return open && fits(problem, piece, spot(s));
  });
}

/** A bag that was set down in the berth of the spare wheel takes nothing more. */
function takesMore(homes: readonly number[], kept: ReadonlySet<number>): boolean {
  return homes.some((h) => !kept.has(h));
}

type Limits = Pick<Layout, 'spotRoom' | 'spotLimit' | 'bagRoom' | 'bagLimit' | 'berthRoom' | 'berthLimit'>;

/** Limits as stated, or what lies there by hand where that is more. */
function limits(
  problem: StowProblem,
  spots: readonly Spot[],
  allowed: readonly (readonly number[])[],
  homes: readonly (readonly number[])[],
): Limits {
  const out: Limits = {
    spotRoom: new Float64Array(spots.length),
    spotLimit: new Float64Array(spots.length),
    bagRoom: new Float64Array(problem.bags.length),
    bagLimit: new Float64Array(problem.bags.length),
    berthRoom: new Float64Array(problem.berths.length),
    berthLimit: new Float64Array(problem.berths.length),
  };
  const add = (to: Float64Array, i: number, n: number): void => {
    if (i >= 0) to[i] = (to[i] ?? 0) + n;
  };
  const filled = new Set<number>();
  for (const [p, piece] of problem.pieces.entries()) {
    const { byHand } = piece;
    if (byHand === undefined) continue;
    const s = allowed[p]?.[0] ?? -1;
    const spot = spots[s];
    if (spot === undefined) continue;
    if (byHand.kind === 'berth') {
      const h = problem.berths.findIndex((berth) => berth.id === byHand.berth);
      add(out.berthRoom, h, piece.millilitres);
      add(out.berthLimit, h, piece.grams);
      continue;
    }
    add(out.spotRoom, s, takes(piece, spot));
    add(out.spotLimit, s, piece.grams);
    add(out.bagRoom, spot.bag, piece.millilitres);
    add(out.bagLimit, spot.bag, piece.grams);
    filled.add(spot.bag);
  }
  for (const b of filled) {
    const bag = problem.bags[b];
    // Where it rides until something better is found; else there might be no stowage at all.
    const [home = -1] = homes[b] ?? [];
    if (bag === undefined || home < 0) continue;
    add(out.berthLimit, home, bag.grams + (out.bagLimit[b] ?? 0));
    add(out.berthRoom, home, isRigid(bag) ? bagMillilitres(bag) : (out.bagRoom[b] ?? 0));
  }
  const widen = (to: Float64Array, stated: (i: number) => number): void => {
    for (const i of to.keys()) to[i] = Math.max(to[i] ?? 0, stated(i));
  };
  widen(out.spotRoom, (s) => spots[s]?.room ?? 0);
  widen(out.spotLimit, (s) => spots[s]?.limit ?? 0);
  widen(out.bagRoom, (b) => {
    const bag = problem.bags[b];
    return bag === undefined ? 0 : bagMillilitres(bag);
  });
  widen(out.bagLimit, (b) => problem.bags[b]?.limit ?? Infinity);
  widen(out.berthRoom, (h) => problem.berths[h]?.millilitres ?? Infinity);
  widen(out.berthLimit, (h) => problem.berths[h]?.room ?? Infinity);
  return out;
}
