import type { Aim, Problem } from '../problem.ts';
import { sortedDistinct } from '../sorted.ts';

/**
 * A problem while it is being reduced. Pieces and needs are written as one kind of number, an atom: piece p is p, need n
 * is pieceCount + n. An atom that turns out to be decided or replaced stays in place and is looked through by `resolve`.
 */
export type Atom = number;

export const OPEN = 0;
/** Piece: comes along. Need: met. */
export const IN = 1;
/** Piece: stays home. Need: cannot be met. */
export const OUT = 2;
/** Stands for other atoms, see `standsFor`. */
export const REPLACED = 3;

export interface DraftPiece {
  grams: number;
  /** Paid when carried, once purchases without a choice are folded in. */
  cents: number;
  /** Belongings this one stands for. */
  count: number;
  /** By limit row. */
  weights: number[];
  /** How it can be had, when that is still a choice. Null: it is there for the taking. */
  supply: {
    buy: { readonly cents: number; readonly weights: readonly number[] } | null;
    bundles: number[];
  } | null;
  /** Sets that, carried whole, bring this piece. */
  wholes: number[];
  /** Comes along and has been taken off the limits: no longer part of the problem. */
  settled: boolean;
  /** Of the unreduced problem: what carrying this piece means. */
  readonly raw: { carried: number[]; bought: number[]; bundles: number[] };
}

export interface DraftBundle {
  state: number;
  readonly cents: number;
  /** Case, when carried whole. */
  readonly grams: number;
  readonly whole: boolean;
  readonly weights: number[];
}

export type DraftNeed =
  | { readonly kind: 'any'; ways: Atom[][] }
  | { readonly kind: 'enough'; units: number; from: { readonly piece: number; readonly units: number }[] };

export interface DraftOption {
  atoms: Atom[];
  gain: number;
}

export interface DraftLimit {
  readonly id: string;
  /** Limit less what is already decided. */
  room: number;
  live: boolean;
}

export interface Draft {
  readonly problem: Problem;
  readonly pieceCount: number;
  readonly pieces: DraftPiece[];
  readonly bundles: DraftBundle[];
  readonly needs: DraftNeed[];
  /** Needs in an order in which each comes after those it refers to. */
  order: number[];
  /** OPEN, IN, OUT or REPLACED, by atom. */
  readonly state: Uint8Array;
  readonly standsFor: Map<Atom, Atom[]>;
  events: DraftOption[][];
  must: Atom[];
  readonly limits: DraftLimit[];
  /** Loss if no option of `events` is completed. */
  loss: number;
  /** Of settled pieces. */
  grams: number;
  pieceTotal: number;
  cents: number;
  /** Needs of `must` nothing can meet, pieces pinned but not to be had. */
  readonly impossible: { needs: number[]; pieces: number[] };
  /** Counts every change, so that passes know whether another round is due. */
  changes: number;
}

/** Reductions may make this many needs of one. */
const MOST_GROWTH = 3;

/** What pieces stand for and cost when they are carried, where the problem is a reduced one itself. */
export interface Standing {
  readonly counts: ArrayLike<number>;
  readonly cents: ArrayLike<number>;
}

export function draftOf(problem: Problem, aim: Aim, standing?: Standing): Draft {
  const pieceCount = problem.pieces.length;
  const rows = problem.limits.length;
  const ofPieces = problem.pieces.map(() => new Array<number>(rows).fill(0));
  const ofBuys = problem.pieces.map(() => new Array<number>(rows).fill(0));
  const ofBundles = problem.bundles.map(() => new Array<number>(rows).fill(0));
  const add = (to: number[] | undefined, row: number, weight: number): void => {
    if (to) to[row] = (to[row] ?? 0) + weight;
  };
  problem.limits.forEach((limit, row) => {
    for (const { piece, weight } of limit.carried) add(ofPieces[piece], row, weight);
    for (const { piece, weight } of limit.bought ?? []) add(ofBuys[piece], row, weight);
    for (const { bundle, weight } of limit.bundles ?? []) add(ofBundles[bundle], row, weight);
  });

  const pieces = problem.pieces.map((piece, p): DraftPiece => {
    const bundles = [...new Set(piece.bundles ?? [])];
    const wholes = bundles.filter((b) => problem.bundles[b]?.carry === 'whole');
    const boxed = wholes.some((b) => problem.bundles[b]?.owned);
    const buy = piece.owned || piece.cents === null ? null : { cents: piece.cents, weights: ofBuys[p] ?? [] };
    return {
      grams: piece.grams,
      cents: standing?.cents[p] ?? 0,
      count: standing?.counts[p] ?? 1,
      weights: ofPieces[p] ?? [],
      supply: piece.owned && !boxed ? null : { buy, bundles },
      wholes,
      settled: false,
      raw: { carried: [p], bought: [], bundles: [] },
    };
  });
  const scored = aim.kind !== 'must-do';
  return {
    problem,
    pieceCount,
    pieces,
    bundles: problem.bundles.map((bundle, b) => ({
      state: OPEN,
      cents: bundle.owned ? 0 : bundle.cents,
      grams: bundle.carry === 'whole' ? bundle.caseGrams : 0,
      whole: bundle.carry === 'whole',
      weights: ofBundles[b] ?? [],
    })),
    needs: problem.needs.map((need): DraftNeed => {
      if (need.kind === 'enough') return { kind: 'enough', units: need.units, from: [...need.from] };
      const ways = need.ways.map((way) => [...way.pieces, ...way.needs.map((n) => pieceCount + n)]);
      return { kind: 'any', ways };
    }),
    order: problem.needs.map((_, n) => n),
    // Room for needs that reductions add.
    state: new Uint8Array(pieceCount + MOST_GROWTH * problem.needs.length),
    standsFor: new Map(),
    events: scored
      ? problem.events.map((event) =>
          event.options.map(({ needs, gain }) => ({ atoms: needs.map((n) => pieceCount + n), gain })),
        )
      : [],
    must: problem.must.map((n) => pieceCount + n),
    limits: problem.limits.map(({ id, limit }) => ({ id, room: limit, live: true })),
    loss: problem.events.reduce((sum, event) => sum + event.loss, problem.fixedLoss),
    grams: 0,
    pieceTotal: 0,
    cents: 0,
    impossible: { needs: [], pieces: [] },
    changes: 0,
  };
}

/**
 * Looks through everything decided or replaced: the open atoms that must still hold for all of `atoms` to hold, sorted and
 * distinct; null when they cannot.
 */
export function resolve(draft: Draft, atoms: readonly Atom[]): Atom[] | null {
  const found: Atom[] = [];
  return gather(draft, atoms, found) ? sortedDistinct(found) : null;
}

/** False when one of the atoms cannot hold. */
function gather(draft: Draft, atoms: readonly Atom[], found: Atom[]): boolean {
  for (const atom of atoms) {
    switch (draft.state[atom]) {
      case IN:
        break;
      case OUT:
        return false;
      case REPLACED:
        if (!gather(draft, draft.standsFor.get(atom) ?? [], found)) return false;
        break;
      default:
        found.push(atom);
    }
  }
  return true;
}

/** `small` within `large`, both sorted. */
export function within(small: readonly number[], large: readonly number[]): boolean {
  let j = 0;
  for (const value of small) {
    while (j < large.length && (large[j] ?? 0) < value) j++;
    if (large[j] !== value) return false;
    j++;
  }
  return true;
}

/** Decides that a piece comes along. */
export function takeAlong(draft: Draft, p: number): void {
  if (draft.state[p] !== OPEN) return;
  draft.state[p] = IN;
  draft.changes++;
  settle(draft, p);
}

/** Settles all pieces that come along and can be: asked again when how pieces are had has been decided. */
export function settleReady(draft: Draft): void {
  for (let p = 0; p < draft.pieceCount; p++) settle(draft, p);
}

/**
 * Takes the weights of a piece that comes along off the limits. A piece whose purchase is still a choice, or whose set is,
 * waits and goes on as a pinned piece.
 */
function settle(draft: Draft, p: number): void {
  const piece = draft.pieces[p];
  if (draft.state[p] !== IN || !piece) return;
  if (piece.settled || piece.supply !== null || piece.wholes.length > 0) return;
  piece.settled = true;
  draft.changes++;
  draft.grams += piece.grams;
  draft.cents += piece.cents;
  draft.pieceTotal += piece.count;
  draft.limits.forEach((limit, row) => {
    limit.room -= piece.weights[row] ?? 0;
  });
}

/** Comes along, but is still part of the reduced problem because of how it is had or what else its set brings. */
export function isPinnedOn(draft: Draft, p: number): boolean {
  return draft.state[p] === IN && draft.pieces[p]?.settled === false;
}

/** Decides that a piece stays home; a set that would bring it whole stays too. */
export function leaveHome(draft: Draft, p: number): void {
  if (draft.state[p] !== OPEN) return;
  draft.state[p] = OUT;
  draft.changes++;
  for (const b of draft.pieces[p]?.wholes ?? []) dropBundle(draft, b);
}

export function dropBundle(draft: Draft, b: number): void {
  const bundle = draft.bundles[b];
  if (!bundle || bundle.state === OUT) return;
  bundle.state = OUT;
  draft.changes++;
  for (const piece of draft.pieces) {
    if (piece.supply) piece.supply.bundles = piece.supply.bundles.filter((other) => other !== b);
    piece.wholes = piece.wholes.filter((other) => other !== b);
  }
}

/** A new need, placed before the one it is made for; null when there is no room. */
export function addNeed(draft: Draft, ways: Atom[][], before: number): Atom | null {
  const n = draft.needs.length;
  if (draft.pieceCount + n >= draft.state.length) return null;
  draft.needs.push({ kind: 'any', ways });
  draft.order.splice(draft.order.indexOf(before), 0, n);
  draft.changes++;
  return draft.pieceCount + n;
}

export function replaceNeed(draft: Draft, n: number, by: Atom[]): void {
  draft.state[draft.pieceCount + n] = REPLACED;
  draft.standsFor.set(draft.pieceCount + n, by);
  draft.changes++;
}

/** Needs that nothing asks for any more need no more rewriting: nothing will ever ask for them again. */
export function forgetUnasked(draft: Draft): void {
  draft.order = askedNeeds(draft);
}

/** Open needs that something still asks for, directly or through a way; in `order`. */
export function askedNeeds(draft: Draft): number[] {
  const { pieceCount } = draft;
  const asked = new Uint8Array(draft.needs.length);
  const mark = (atoms: readonly Atom[]): void => {
    for (const atom of atoms) if (atom >= pieceCount) asked[atom - pieceCount] = 1;
  };
  mark(draft.must);
  for (const event of draft.events) for (const option of event) mark(option.atoms);
  for (let at = draft.order.length - 1; at >= 0; at--) {
    const n = draft.order[at] ?? 0;
    const need = draft.needs[n];
    if (asked[n] === 1 && need?.kind === 'any') need.ways.forEach(mark);
  }
  return draft.order.filter((n) => asked[n] === 1 && draft.state[pieceCount + n] === OPEN);
}
