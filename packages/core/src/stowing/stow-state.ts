import type { Layout } from './lay-out.ts';
import { AT, PieceCosts } from './piece-costs.ts';
import { bagMillilitres, isRigid, takes } from './spots.ts';
import {
  COUNTED,
  LEVEL_COUNT,
  ONE_PERSON_GRAMS,
  isElectric,
  isFlammable,
  isLithium,
  isSharp,
  isWet,
} from './stow-rules.ts';

/** Kinds of company that are counted bag by bag. */
const WET = 0;
const ELECTRIC = 1;
const LITHIUM = 2;
const FLAMMABLE = 3;
const KINDS = 4;

/**
 * A stowage kept up to date piece by piece: what every place, bag and berth holds, and its score at every level. Every step
 * is undone exactly by its opposite (whole numbers), so that "what if it lay there" is put, read, put back.
 */
export class StowState {
  readonly layout: Layout;
  readonly score = new Float64Array(LEVEL_COUNT);
  /** Place of each piece; -1: none. */
  readonly spotOf: Int32Array;
  /** Berth of each bag, whether it holds anything or not. */
  readonly berthOf: Int32Array;
  private readonly costs: PieceCosts;
  private readonly spotTaken: Float64Array;
  private readonly spotGrams: Float64Array;
  private readonly bagGrams: Float64Array;
  private readonly bagTaken: Float64Array;
  private readonly bagCount: Int32Array;
  private readonly kinds: Int32Array;
  private readonly sharp: Int32Array;
  private readonly electric: Int32Array;
  private readonly berthGrams: Float64Array;
  private readonly berthTaken: Float64Array;
  private readonly groupIn: readonly Int32Array[];
  private readonly rowFactor: readonly Float64Array[];
  private readonly rowLimit: Float64Array;
  /** Axles and the like that are over now. */
  private over: number;
  private readonly kindOf: Uint8Array;
  private readonly sharpOf: Uint8Array;

  constructor(layout: Layout) {
    const { problem, spots } = layout;
    this.layout = layout;
    this.costs = new PieceCosts(layout);
    const bags = problem.bags.length;
    this.spotOf = new Int32Array(problem.pieces.length).fill(-1);
    this.berthOf = Int32Array.from(layout.homes, (homes) => homes[0] ?? -1);
    this.spotTaken = new Float64Array(spots.length);
    this.spotGrams = new Float64Array(spots.length);
    this.bagGrams = new Float64Array(bags);
    this.bagTaken = new Float64Array(bags);
    this.bagCount = new Int32Array(bags);
    this.kinds = new Int32Array(bags * KINDS);
    this.sharp = new Int32Array(spots.length);
    this.electric = new Int32Array(spots.length);
    this.berthGrams = new Float64Array(problem.berths.length);
    this.berthTaken = new Float64Array(problem.berths.length);
    this.groupIn = layout.groups.map(() => new Int32Array(bags + problem.berths.length));
    this.rowFactor = problem.loads.map((row) =>
      Float64Array.from(problem.berths, (berth) => row.factor[berth.id] ?? 0),
    );
    this.rowLimit = Float64Array.from(problem.loads, ({ grams }) => grams);
    this.kindOf = Uint8Array.from(
      problem.pieces,
      (p) =>
        (isWet(p) ? 1 << WET : 0) |
        (isElectric(p) ? 1 << ELECTRIC : 0) |
        (isLithium(p) ? 1 << LITHIUM : 0) |
        (isFlammable(p) ? 1 << FLAMMABLE : 0),
    );
    this.sharpOf = Uint8Array.from(problem.pieces, (p) => (isSharp(p) ? 1 : 0));
    this.score[AT.unplaced] = problem.pieces.length;
    this.over = this.countOver();
    this.score[AT.danger] = this.over;
  }

  /** Whether a piece that lies nowhere may lie here: every limit of the place, its bag and its berth. */
  takesPiece(p: number, s: number): boolean {
    const { problem, spots, spotRoom, spotLimit, bagRoom, bagLimit, berthRoom, berthLimit } = this.layout;
    const piece = problem.pieces[p];
    const spot = spots[s];
    if (piece === undefined || spot === undefined) return false;
    if ((this.spotTaken[s] ?? 0) + takes(piece, spot) > (spotRoom[s] ?? 0)) return false;
    if ((this.spotGrams[s] ?? 0) + piece.grams > (spotLimit[s] ?? 0)) return false;
    const b = spot.bag;
    const h = this.berthIn(s);
    let grams: number = piece.grams;
    let room: number = piece.millilitres;
    const bag = problem.bags[b];
    if (bag !== undefined) {
      if ((this.bagTaken[b] ?? 0) + piece.millilitres > (bagRoom[b] ?? 0)) return false;
      if ((this.bagGrams[b] ?? 0) + piece.grams > (bagLimit[b] ?? 0)) return false;
      const fresh = this.bagCount[b] === 0;
      if (fresh) grams += bag.grams;
      if (isRigid(bag)) room = fresh ? bagMillilitres(bag) : 0;
    }
    if ((this.berthGrams[h] ?? 0) + grams > (berthLimit[h] ?? 0)) return false;
    return (this.berthTaken[h] ?? 0) + room <= (berthRoom[h] ?? 0);
  }

  /** Whether moving a piece might mend something that is wrong between things: company, an axle, what belongs together. */
  mightMend(p: number): boolean {
    return this.score[AT.danger] !== 0 || (this.layout.groupsOf[p] ?? []).some((g) => this.partsOf(g) > 0);
  }

  /** No axle is over: then one piece more, wherever it lies, makes no level better but that of things without a place. */
  get onlyAdds(): boolean {
    return this.over === 0;
  }

  /** What a piece counts by itself in a place, with its bag where it stands, added to `out` times `sign`. */
  addCost(p: number, s: number, out: Float64Array, sign: 1 | -1): void {
    this.costs.add(p, s, this.berthIn(s), out, sign);
  }

  /** Moves a piece; -1 takes it out. Limits are the caller's to ask about. */
  put(p: number, s: number): void {
    const now = this.spotOf[p] ?? -1;
    if (now === s) return;
    if (now >= 0) this.change(p, now, -1);
    this.spotOf[p] = s;
    if (s >= 0) this.change(p, s, 1);
  }

  /** Whether a bag with what is in it may ride in this berth. */
  takesBag(b: number, h: number): boolean {
    if (this.bagCount[b] === 0) return true;
    const { berthRoom, berthLimit } = this.layout;
    if ((this.berthGrams[h] ?? 0) + this.massOf(b) > (berthLimit[h] ?? 0)) return false;
    return (this.berthTaken[h] ?? 0) + this.roomOf(b) <= (berthRoom[h] ?? 0);
  }

  /** Sets a bag down in another berth. */
  setBerth(b: number, h: number): void {
    if (this.berthOf[b] === h) return;
    if (!this.bagUsed(b)) {
      this.berthOf[b] = h;
      return;
    }
    const inside: (readonly [number, number])[] = [];
    for (const [p, s] of this.spotOf.entries())
      if (s >= 0 && this.layout.spots[s]?.bag === b) inside.push([p, s]);
    for (const [p] of inside) this.put(p, -1);
    this.berthOf[b] = h;
    for (const [p, s] of inside) this.put(p, s);
  }

  /** Berth of a place, through its bag. */
  berthIn(s: number): number {
    const spot = this.layout.spots[s];
    if (spot === undefined) return -1;
    return spot.bag < 0 ? spot.berth : (this.berthOf[spot.bag] ?? -1);
  }

  /** Bags and berths beyond the first that a group lies in. */
  partsOf(g: number): number {
    const inUnits = this.groupIn[g];
    return inUnits === undefined ? 0 : parts(inUnits);
  }

  bagUsed(b: number): boolean {
    return (this.bagCount[b] ?? 0) > 0;
  }

  /** Grams of a bag that comes, itself included; 0 for an empty one, which stays home. */
  massOf(b: number): number {
    return this.bagUsed(b) ? (this.bagGrams[b] ?? 0) + (this.layout.problem.bags[b]?.grams ?? 0) : 0;
  }

  /** Room a bag takes in its berth, ml. */
  roomOf(b: number): number {
    const bag = this.layout.problem.bags[b];
    if (bag === undefined || !this.bagUsed(b)) return 0;
    return isRigid(bag) ? bagMillilitres(bag) : (this.bagTaken[b] ?? 0);
  }

  snapshot(): { readonly spotOf: Int32Array; readonly berthOf: Int32Array; readonly score: Float64Array } {
    return { spotOf: this.spotOf.slice(), berthOf: this.berthOf.slice(), score: this.score.slice() };
  }

  restore(to: { readonly spotOf: Int32Array; readonly berthOf: Int32Array }): void {
    for (const p of this.spotOf.keys()) this.put(p, -1);
    for (const [b, h] of to.berthOf.entries()) this.berthOf[b] = h;
    for (const [p, s] of to.spotOf.entries()) this.put(p, s);
  }

  private change(p: number, s: number, sign: 1 | -1): void {
    const { problem, spots, groupsOf } = this.layout;
    const piece = problem.pieces[p];
    const spot = spots[s];
    if (piece === undefined || spot === undefined) return;
    const b = spot.bag;
    const h = this.berthIn(s);
    this.add(AT.unplaced, -sign);
    this.costs.add(p, s, h, this.score, sign);
    this.add(AT.danger, -this.company(b, s) - this.over);
    if (b >= 0) this.bearBag(b, h, -1);
    bump(this.spotTaken, s, sign * takes(piece, spot));
    bump(this.spotGrams, s, sign * piece.grams);
    if (b >= 0) {
      bump(this.bagGrams, b, sign * piece.grams);
      bump(this.bagTaken, b, sign * piece.millilitres);
      bump(this.bagCount, b, sign);
      const kinds = this.kindOf[p] ?? 0;
      for (let k = 0; k < KINDS; k++) if ((kinds >> k) & 1) bump(this.kinds, b * KINDS + k, sign);
      if (this.sharpOf[p] === 1) bump(this.sharp, s, sign);
      if ((kinds >> ELECTRIC) & 1) bump(this.electric, s, sign);
      this.bearBag(b, h, 1);
    } else {
      bump(this.berthGrams, h, sign * piece.grams);
      bump(this.berthTaken, h, sign * piece.millilitres);
    }
    this.over = this.countOver();
    this.add(AT.danger, this.company(b, s) + this.over);
    const unit = b >= 0 ? b : problem.bags.length + spot.berth;
    for (const g of groupsOf[p] ?? []) {
      const inUnits = this.groupIn[g];
      if (inUnits === undefined) continue;
      this.add(AT.order, -parts(inUnits));
      bump(inUnits, unit, sign);
      this.add(AT.order, parts(inUnits));
    }
  }

  /** Takes a bag off its berth, or puts it back. */
  private bearBag(b: number, h: number, sign: 1 | -1): void {
    bump(this.berthGrams, h, sign * this.massOf(b));
    bump(this.berthTaken, h, sign * this.roomOf(b));
  }

  /** Bad company in a bag, and in one place of it. */
  private company(b: number, s: number): number {
    if (b < 0) return 0;
    const here = (kind: number): boolean => (this.kinds[b * KINDS + kind] ?? 0) > 0;
    return (
      Number(here(WET) && here(ELECTRIC)) +
      Number(here(LITHIUM) && here(FLAMMABLE)) +
      Number(this.massOf(b) > ONE_PERSON_GRAMS) +
      Number((this.sharp[s] ?? 0) > 0 && (this.electric[s] ?? 0) > 0)
    );
  }

  /** Asked at every step, so loops without iterators. */
  private countOver(): number {
    let over = 0;
    const { rowFactor, rowLimit, berthGrams } = this;
    for (let r = 0; r < rowFactor.length; r++) {
      const factor = rowFactor[r];
      if (factor === undefined) continue;
      let sum = 0;
      for (let h = 0; h < factor.length; h++) sum += (factor[h] ?? 0) * (berthGrams[h] ?? 0);
      if (sum > (rowLimit[r] ?? 0) + ROW_SLACK) over++;
    }
    return over;
  }

  private add(at: number, n: number): void {
    bump(this.score, at, n);
  }
}

/** Factors are no whole numbers: a hundredth of a gram either way is what their sums round. */
const ROW_SLACK = 0.01;

function bump(list: Float64Array | Int32Array, i: number, n: number): void {
  list[i] = (list[i] ?? 0) + n;
}

/** Bags and berths beyond the first that members lie in. */
function parts(inUnits: Int32Array): number {
  let used = 0;
  for (let u = 0; u < inUnits.length; u++) if ((inUnits[u] ?? 0) > 0) used++;
  return Math.max(0, used - 1);
}

/** Whether `a` is no worse than `b` but for a share of the levels that are measured, not counted. */
export function asGood(a: ArrayLike<number>, b: ArrayLike<number>, share: number): boolean {
  for (let i = 0; i < LEVEL_COUNT; i++) {
    const d = (a[i] ?? 0) - (b[i] ?? 0);
    if (d < 0) return true;
    if (d > (i < COUNTED ? 0 : share * Math.abs(b[i] ?? 0))) return false;
  }
  return true;
}

/** Below 0: `a` is the better score; levels in their order. */
export function compareScores(a: ArrayLike<number>, b: ArrayLike<number>): number {
  for (let i = 0; i < LEVEL_COUNT; i++) {
    const d = (a[i] ?? 0) - (b[i] ?? 0);
    if (d !== 0) return d;
  }
  return 0;
}
