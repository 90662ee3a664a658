import type { CompiledProblem } from './compile.ts';

/**
 * What a set of carried pieces achieves, kept up to date piece by piece. Every quantity is a whole number and every step
 * is exactly undone by its opposite, so that "the loss without this piece" is leave, read, carry again: a few hundred
 * additions, no allocation (M10 asks it for every piece).
 */
export class KitState {
  readonly compiled: CompiledProblem;
  /** 1 where carried. */
  readonly carried: Uint8Array;
  /** Complete ways ('any') or units ('enough') of each need. */
  readonly filled: Float64Array;
  /** Score units still lost. */
  loss: number;
  /** Grams of the carried pieces; cases of sets are not pieces. */
  grams = 0;
  pieces = 0;
  /** Needs of `must` not met. */
  mustOpen: number;
  private readonly wayMissing: Int32Array;
  private readonly optionMissing: Int32Array;
  private readonly bestGain: Float64Array;

  constructor(compiled: CompiledProblem) {
    this.compiled = compiled;
    this.carried = new Uint8Array(compiled.grams.length);
    this.filled = new Float64Array(compiled.needUnits.length);
    this.loss = compiled.totalLoss;
    this.mustOpen = compiled.mustCount;
    this.wayMissing = compiled.waySize.slice();
    this.optionMissing = compiled.optionSize.slice();
    this.bestGain = new Float64Array(compiled.eventStart.length - 1);
    this.optionMissing.forEach((missing, o) => {
      if (missing === 0) this.optionUp(o);
    });
    // Ascending, so that what an always-met need completes is already counted when its own turn comes.
    compiled.needUnits.forEach((units, n) => {
      if (units <= 0) this.needUp(n);
    });
    this.wayMissing.forEach((missing, w) => {
      if (missing === 0 && compiled.waySize[w] === 0) this.wayUp(w);
    });
  }

  needMet(n: number): boolean {
    return (this.filled[n] ?? 0) >= (this.compiled.needUnits[n] ?? 1);
  }

  optionComplete(o: number): boolean {
    return this.optionMissing[o] === 0;
  }

  /** Best gain of a complete option of the event; 0 when none is. */
  gainOf(event: number): number {
    return this.bestGain[event] ?? 0;
  }

  carry(p: number): void {
    if (this.carried[p] === 1) return;
    this.carried[p] = 1;
    this.pieces++;
    const { pieceWays, pieceEnough, pieceEnoughUnits, needUnits, grams } = this.compiled;
    this.grams += grams[p] ?? 0;
    for (let i = pieceWays.start[p] ?? 0, end = pieceWays.start[p + 1] ?? 0; i < end; i++) {
      const w = pieceWays.item[i] ?? 0;
      const left = (this.wayMissing[w] ?? 0) - 1;
      this.wayMissing[w] = left;
      if (left === 0) this.wayUp(w);
    }
    for (let i = pieceEnough.start[p] ?? 0, end = pieceEnough.start[p + 1] ?? 0; i < end; i++) {
      const n = pieceEnough.item[i] ?? 0;
      const before = this.filled[n] ?? 0;
      const after = before + (pieceEnoughUnits[i] ?? 0);
      this.filled[n] = after;
      const asked = needUnits[n] ?? 0;
      if (before < asked && after >= asked) this.needUp(n);
    }
  }

  leave(p: number): void {
    if (this.carried[p] !== 1) return;
    this.carried[p] = 0;
    this.pieces--;
    const { pieceWays, pieceEnough, pieceEnoughUnits, needUnits, grams } = this.compiled;
    this.grams -= grams[p] ?? 0;
    for (let i = pieceWays.start[p] ?? 0, end = pieceWays.start[p + 1] ?? 0; i < end; i++) {
      const w = pieceWays.item[i] ?? 0;
      const before = this.wayMissing[w] ?? 0;
      this.wayMissing[w] = before + 1;
      if (before === 0) this.wayDown(w);
    }
    for (let i = pieceEnough.start[p] ?? 0, end = pieceEnough.start[p + 1] ?? 0; i < end; i++) {
      const n = pieceEnough.item[i] ?? 0;
      const before = this.filled[n] ?? 0;
      const after = before - (pieceEnoughUnits[i] ?? 0);
      this.filled[n] = after;
      const asked = needUnits[n] ?? 0;
      if (before >= asked && after < asked) this.needDown(n);
    }
  }

  /** Makes the carried set exactly this one. */
  become(carried: ArrayLike<number>): void {
    for (let p = 0; p < this.carried.length; p++) {
      if (carried[p] === 1) this.carry(p);
      else this.leave(p);
    }
  }

  /** Loss if this carried piece stayed at home, and whether `must` would still hold. */
  without(p: number): { readonly loss: number; readonly mustHolds: boolean } {
    if (this.carried[p] !== 1) return { loss: this.loss, mustHolds: this.mustOpen === 0 };
    this.leave(p);
    const answer = { loss: this.loss, mustHolds: this.mustOpen === 0 };
    this.carry(p);
    return answer;
  }

  /** Loss if this piece came too. */
  with(p: number): number {
    if (this.carried[p] === 1) return this.loss;
    this.carry(p);
    const { loss } = this;
    this.leave(p);
    return loss;
  }

  private wayUp(w: number): void {
    const n = this.compiled.wayNeed[w] ?? 0;
    const ways = (this.filled[n] ?? 0) + 1;
    this.filled[n] = ways;
    if (ways === 1) this.needUp(n);
  }

  private wayDown(w: number): void {
    const n = this.compiled.wayNeed[w] ?? 0;
    const ways = (this.filled[n] ?? 0) - 1;
    this.filled[n] = ways;
    if (ways === 0) this.needDown(n);
  }

  private needUp(n: number): void {
    const { needWays, needOptions, must } = this.compiled;
    if (must[n] === 1) this.mustOpen--;
    for (let i = needWays.start[n] ?? 0, end = needWays.start[n + 1] ?? 0; i < end; i++) {
      const w = needWays.item[i] ?? 0;
      const left = (this.wayMissing[w] ?? 0) - 1;
      this.wayMissing[w] = left;
      if (left === 0) this.wayUp(w);
    }
    for (let i = needOptions.start[n] ?? 0, end = needOptions.start[n + 1] ?? 0; i < end; i++) {
      const o = needOptions.item[i] ?? 0;
      const left = (this.optionMissing[o] ?? 0) - 1;
      this.optionMissing[o] = left;
      if (left === 0) this.optionUp(o);
    }
  }

  private needDown(n: number): void {
    const { needWays, needOptions, must } = this.compiled;
    if (must[n] === 1) this.mustOpen++;
    for (let i = needWays.start[n] ?? 0, end = needWays.start[n + 1] ?? 0; i < end; i++) {
      const w = needWays.item[i] ?? 0;
      const before = this.wayMissing[w] ?? 0;
      this.wayMissing[w] = before + 1;
      if (before === 0) this.wayDown(w);
    }
    for (let i = needOptions.start[n] ?? 0, end = needOptions.start[n + 1] ?? 0; i < end; i++) {
      const o = needOptions.item[i] ?? 0;
      const before = this.optionMissing[o] ?? 0;
      this.optionMissing[o] = before + 1;
      if (before === 0) this.optionDown(o);
    }
  }

  private optionUp(o: number): void {
    const e = this.compiled.optionEvent[o] ?? 0;
    const gain = this.compiled.optionGain[o] ?? 0;
    const best = this.bestGain[e] ?? 0;
    if (gain <= best) return;
    this.bestGain[e] = gain;
    this.loss -= gain - best;
  }

  private optionDown(o: number): void {
    const { optionEvent, optionGain, eventStart } = this.compiled;
    const e = optionEvent[o] ?? 0;
    const best = this.bestGain[e] ?? 0;
    if ((optionGain[o] ?? 0) < best) return;
    let next = 0;
    for (let i = eventStart[e] ?? 0, end = eventStart[e + 1] ?? 0; i < end; i++) {
      if (this.optionMissing[i] === 0) next = Math.max(next, optionGain[i] ?? 0);
    }
    this.bestGain[e] = next;
    this.loss += best - next;
  }
}
