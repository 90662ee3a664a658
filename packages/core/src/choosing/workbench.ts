import { compile } from './compile.ts';
import type { CompiledProblem } from './compile.ts';
import { evaluate } from './evaluate.ts';
import { KitState } from './kit-state.ts';
import type { Choice } from './problem.ts';
import type { Reduced } from './reduce/reduce.ts';

/** A feasible choice of the reduced problem with what it comes to, settled pieces included. */
export interface Found {
  readonly choice: Choice;
  readonly loss: number;
  readonly grams: number;
  readonly pieces: number;
  readonly cents: number;
}

/**
 * Where plans are put together by hand: the carried set, what it achieves, and how much of each limit it uses. Flat
 * arrays throughout. The last row is the mass cap of the frontier; it is open unless set.
 */
export class Workbench {
  readonly reduced: Reduced;
  readonly compiled: CompiledProblem;
  readonly state: KitState;
  readonly pieceCount: number;
  readonly rows: number;
  /** rows x pieces: what carrying (and, where it must be bought, buying) a piece takes. */
  readonly weight: Float64Array;
  readonly room: Float64Array;
  readonly used: Float64Array;
  /** 1 where how the piece is had is a choice. */
  readonly hasSupply: Uint8Array;
  readonly anySupply: boolean;
  /** Ways of need n: `wayStart[n] .. wayStart[n+1]-1`; atoms of way w (piece p, or pieceCount + need) likewise. */
  readonly wayStart: Int32Array;
  readonly atomStart: Int32Array;
  readonly atom: Int32Array;
  readonly optionNeedStart: Int32Array;
  readonly optionNeed: Int32Array;
  /** Cheapest completion of each need at the prices last given to `priceNeeds`, and the way it takes. */
  readonly needPrice: Float64Array;
  readonly needWay: Int32Array;
  /** By option: the prices of its needs together. */
  readonly optionPrice: Float64Array;
  /** 1 where a need must be priced anew; all 0 between calls. */
  private readonly stale: Uint8Array;

  constructor(reduced: Reduced) {
    const { problem } = reduced;
    this.reduced = reduced;
    this.compiled = compile(problem);
    this.state = new KitState(this.compiled);
    const count = problem.pieces.length;
    this.pieceCount = count;
    this.rows = problem.limits.length + 1;
    this.weight = new Float64Array(this.rows * count);
    this.room = new Float64Array(this.rows).fill(Infinity);
    this.used = new Float64Array(this.rows);
    this.hasSupply = Uint8Array.from(problem.pieces, (piece) => {
      const boxed = (piece.bundles ?? []).some(
        (b) => problem.bundles[b]?.owned && problem.bundles[b].carry === 'whole',
      );
      return !piece.owned || boxed ? 1 : 0;
    });
    this.anySupply = problem.bundles.length > 0 || this.hasSupply.includes(1);
    problem.limits.forEach((limit, row) => {
      this.room[row] = limit.limit;
      const add = (piece: number, weight: number): void => {
        const at = row * count + piece;
        this.weight[at] = (this.weight[at] ?? 0) + weight;
      };
      for (const { piece, weight } of limit.carried) add(piece, weight);
      for (const { piece, weight } of limit.bought ?? []) add(piece, weight);
    });
    problem.pieces.forEach((piece, p) => {
      this.weight[(this.rows - 1) * count + p] = piece.grams;
    });

    const wayStart = [0];
    const atomStart = [0];
    const atom: number[] = [];
    for (const need of problem.needs) {
      if (need.kind === 'any') {
        for (const way of need.ways) {
          for (const p of new Set(way.pieces)) atom.push(p);
          for (const n of new Set(way.needs)) atom.push(count + n);
          atomStart.push(atom.length);
        }
      }
      wayStart.push(atomStart.length - 1);
    }
    this.wayStart = Int32Array.from(wayStart);
    this.atomStart = Int32Array.from(atomStart);
    this.atom = Int32Array.from(atom);
    const optionNeedStart = [0];
    const optionNeed: number[] = [];
    for (const event of problem.events) {
      for (const option of event.options) {
        optionNeed.push(...new Set(option.needs));
        optionNeedStart.push(optionNeed.length);
      }
    }
    this.optionNeedStart = Int32Array.from(optionNeedStart);
    this.optionNeed = Int32Array.from(optionNeed);
    this.needPrice = new Float64Array(problem.needs.length);
    this.needWay = new Int32Array(problem.needs.length);
    this.optionPrice = new Float64Array(this.compiled.optionGain.length);
    this.stale = new Uint8Array(problem.needs.length);
  }

  /** Cap on the grams of the reduced problem's own pieces and cases. */
  capGrams(grams: number): void {
    this.room[this.rows - 1] = grams;
  }

  clear(): void {
    for (let p = 0; p < this.pieceCount; p++) this.leave(p);
    this.reduced.problem.pieces.forEach((piece, p) => {
      if (piece.pin === 'always') this.carry(p);
    });
  }

  load(carried: readonly number[]): void {
    this.clear();
    for (const p of carried) this.carry(p);
  }

  carry(p: number): void {
    if (this.state.carried[p] === 1) return;
    this.state.carry(p);
    for (let row = 0; row < this.rows; row++) {
      this.used[row] = (this.used[row] ?? 0) + (this.weight[row * this.pieceCount + p] ?? 0);
    }
  }

  leave(p: number): void {
    if (this.state.carried[p] !== 1) return;
    this.state.leave(p);
    for (let row = 0; row < this.rows; row++) {
      this.used[row] = (this.used[row] ?? 0) - (this.weight[row * this.pieceCount + p] ?? 0);
    }
  }

  fits(): boolean {
    for (let row = 0; row < this.rows; row++) if ((this.used[row] ?? 0) > (this.room[row] ?? 0)) return false;
    return true;
  }

  wouldFit(p: number): boolean {
    for (let row = 0; row < this.rows; row++) {
      const weight = this.weight[row * this.pieceCount + p] ?? 0;
      if (weight > 0 && (this.used[row] ?? 0) + weight > (this.room[row] ?? 0)) return false;
    }
    return true;
  }

  /** Price of meeting each need from here, ascending, so that smaller needs are priced first. Shared pieces count twice. */
  priceNeeds(price: Float64Array): void {
    for (let n = 0; n < this.needPrice.length; n++) this.needPrice[n] = this.priceOf(n, price);
    for (let o = 0; o < this.optionPrice.length; o++) this.priceOption(o);
  }

  /**
   * The same after `pieces` were carried or left, at the same prices as before: only needs that name one of them, or a need
   * whose price has changed, can cost something else now.
   */
  repriceNeeds(price: Float64Array, pieces: Iterable<number>): void {
    const { stale, needPrice } = this;
    const { pieceWays, pieceEnough, needWays, needOptions, wayNeed } = this.compiled;
    const staleOptions: number[] = [];
    let first = needPrice.length;
    for (const p of pieces) {
      for (let i = pieceWays.start[p] ?? 0, end = pieceWays.start[p + 1] ?? 0; i < end; i++) {
        const n = wayNeed[pieceWays.item[i] ?? 0] ?? 0;
        stale[n] = 1;
        if (n < first) first = n;
      }
      for (let i = pieceEnough.start[p] ?? 0, end = pieceEnough.start[p + 1] ?? 0; i < end; i++) {
        const n = pieceEnough.item[i] ?? 0;
        stale[n] = 1;
        if (n < first) first = n;
      }
    }
    for (let n = first; n < needPrice.length; n++) {
      if (stale[n] !== 1) continue;
      stale[n] = 0;
      const before = needPrice[n];
      const now = this.priceOf(n, price);
      if (now === before) continue;
      needPrice[n] = now;
      // Larger needs come later, so they are still ahead.
      for (let i = needWays.start[n] ?? 0, end = needWays.start[n + 1] ?? 0; i < end; i++)
        stale[wayNeed[needWays.item[i] ?? 0] ?? 0] = 1;
      for (let i = needOptions.start[n] ?? 0, end = needOptions.start[n + 1] ?? 0; i < end; i++)
        staleOptions.push(needOptions.item[i] ?? 0);
    }
    for (const o of staleOptions) this.priceOption(o);
  }

  private priceOption(o: number): void {
    let sum = 0;
    for (let i = this.optionNeedStart[o] ?? 0, end = this.optionNeedStart[o + 1] ?? 0; i < end; i++)
      sum += this.needPrice[this.optionNeed[i] ?? 0] ?? 0;
    this.optionPrice[o] = sum;
  }

  /** Cheapest completion of a need at the prices of smaller ones; notes the way it takes. */
  private priceOf(n: number, price: Float64Array): number {
    const { state, pieceCount, wayStart, atomStart, atom, needPrice, needWay } = this;
    needWay[n] = -1;
    if (state.needMet(n)) return 0;
    if (this.reduced.problem.needs[n]?.kind === 'enough')
      return this.enoughPieces(n, price).reduce((sum, p) => sum + (price[p] ?? 0), 0);
    let best = Infinity;
    for (let w = wayStart[n] ?? 0, end = wayStart[n + 1] ?? 0; w < end; w++) {
      let sum = 0;
      for (let i = atomStart[w] ?? 0, last = atomStart[w + 1] ?? 0; i < last && sum < best; i++) {
        const a = atom[i] ?? 0;
        if (a >= pieceCount) sum += needPrice[a - pieceCount] ?? Infinity;
        else if (state.carried[a] !== 1) sum += price[a] ?? 0;
      }
      if (sum >= best) continue;
      best = sum;
      needWay[n] = w;
    }
    return best;
  }

  /** Pieces still missing for the cheapest completion of a need, added to `into`. */
  collect(n: number, price: Float64Array, into: Set<number>): void {
    if (this.state.needMet(n)) return;
    if (this.reduced.problem.needs[n]?.kind === 'enough') {
      for (const p of this.enoughPieces(n, price)) into.add(p);
      return;
    }
    const w = this.needWay[n] ?? -1;
    if (w < 0) return;
    for (let i = this.atomStart[w] ?? 0, last = this.atomStart[w + 1] ?? 0; i < last; i++) {
      const a = this.atom[i] ?? 0;
      if (a >= this.pieceCount) this.collect(a - this.pieceCount, price, into);
      else if (this.state.carried[a] !== 1) into.add(a);
    }
  }

  /** Cheapest per unit first until the units are reached; few enough to look through again for each. */
  private enoughPieces(n: number, price: Float64Array): number[] {
    const need = this.reduced.problem.needs[n];
    const taken: number[] = [];
    if (need?.kind !== 'enough') return taken;
    let missing = need.units - (this.state.filled[n] ?? 0);
    while (missing > 0) {
      let cheapest = -1;
      let least = Infinity;
      let gives = 0;
      for (const { piece, units } of need.from) {
        if (this.state.carried[piece] === 1 || units <= 0 || taken.includes(piece)) continue;
        const each = (price[piece] ?? 0) / Math.min(units, missing);
        if (each >= least) continue;
        least = each;
        cheapest = piece;
        gives = units;
      }
      if (cheapest < 0) break;
      taken.push(cheapest);
      missing -= gives;
    }
    return taken;
  }

  /** The carried set as a choice with purchases, recounted exactly; null when some limit or need does not hold. */
  found(): Found | null {
    if (this.state.mustOpen > 0) return null;
    const choice = this.anySupply
      ? this.withPurchases()
      : { carried: this.carriedList(), bought: [], bundles: [] };
    return this.measure(choice);
  }

  measure(choice: Choice): Found | null {
    const { problem, counts, cents, settled } = this.reduced;
    const evaluation = evaluate(problem, choice, this.compiled);
    if (!evaluation.feasible) return null;
    const grams = evaluation.grams;
    if (grams > (this.room[this.rows - 1] ?? Infinity)) return null;
    return {
      choice,
      loss: evaluation.loss,
      grams: grams + settled.grams,
      pieces: choice.carried.reduce((sum, p) => sum + (counts[p] ?? 1), settled.pieces),
      cents: choice.carried.reduce((sum, p) => sum + (cents[p] ?? 0), settled.cents + evaluation.cents),
    };
  }

  private carriedList(): number[] {
    const list: number[] = [];
    for (let p = 0; p < this.pieceCount; p++) if (this.state.carried[p] === 1) list.push(p);
    return list;
  }

  /** Picks purchases and sets for the carried set, cheapest for each piece in turn; a whole set brings its members along. */
  private withPurchases(): Choice {
    const { pieces, bundles } = this.reduced.problem;
    const carried = new Set(this.carriedList());
    const chosen = new Set<number>();
    const bought = new Set<number>();
    for (const p of carried) {
      const piece = pieces[p];
      if (this.hasSupply[p] !== 1 || !piece || (piece.bundles ?? []).some((b) => chosen.has(b))) continue;
      let best = piece.owned ? Infinity : (piece.cents ?? Infinity);
      let by = -1;
      for (const b of piece.bundles ?? []) {
        const set = bundles[b];
        const price = set?.owned ? 0 : (set?.cents ?? Infinity);
        if (price >= best) continue;
        best = price;
        by = b;
      }
      if (by < 0) {
        if (best < Infinity) bought.add(p);
        continue;
      }
      chosen.add(by);
      if (bundles[by]?.carry === 'whole') {
        pieces.forEach((other, q) => {
          if (other.bundles?.includes(by)) carried.add(q);
        });
      }
    }
    for (const p of bought) if (pieces[p]?.bundles?.some((b) => chosen.has(b))) bought.delete(p);
    const ascending = (set: ReadonlySet<number>): number[] => [...set].sort((a, b) => a - b);
    return { carried: ascending(carried), bought: ascending(bought), bundles: ascending(chosen) };
  }
}
