import { fixByReducedCost, wholeAbove } from './bound.ts';
import type { CertifiedBound } from './bound.ts';
import { HELD } from './hunt.ts';
import type { Hunt } from './hunt.ts';
import { roundToPlan } from './rounding.ts';

export type TreeEnd =
  /** The best plan is the best there is, in every measure; without one, there is none. */
  | { readonly kind: 'proven' }
  | { readonly kind: 'stopped'; readonly bound: number; readonly by: 'time' | 'cancel' | 'rounding' }
  /** More nodes than allowed: somebody else should finish. `bound` holds for the first measure. */
  | { readonly kind: 'too-many'; readonly bound: number }
  /** At the root so much was ruled out that what is left should be made a problem of its own (./shrink.ts). */
  | {
      readonly kind: 'shrinks';
      readonly bound: number;
      readonly lower: Float64Array;
      readonly upper: Float64Array;
    }
  | { readonly kind: 'failed'; readonly cause: string };

interface Node {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Measures before this one are known to be no better here than the best plan's. */
  readonly level: number;
  /** Least value of the first measure anywhere below. */
  readonly bound: number;
  /** The column that was branched on, its value then and the way it went; -1 at the root. */
  readonly branched: number;
  readonly fraction: number;
  readonly up: boolean;
}

/**
 * Branch and bound on the relaxation kept in the solver. A node differs from the last one solved by a few column bounds,
 * so most take about a millisecond, where an integer solver started afresh needs its whole root again; and after
 * rounding and reduced-cost fixing there are usually tens of nodes.
 *
 * Lexicographic in one tree: a node whose bound on the first measure *equals* the best plan's value is not cut but asked
 * for the second measure, with the first held at the best value, and so on. It goes only when it can be no better in
 * the whole row. All measures are whole numbers, so a bound counts as its ceiling; every bound is recomputed from the
 * duals (./bound.ts), never taken from the solver.
 */
export function growTree(hunt: Hunt, { mostNodes, roundingOnly = false, shrinkFrom }: TreeSettings): TreeEnd {
  const role = roundingOnly ? 'rounding' : 'whole';
  return new Tree(hunt, mostNodes, role, hunt.lower, hunt.upper, shrinkFrom).grow();
}

export interface TreeSettings {
  readonly mostNodes: number;
  readonly roundingOnly?: boolean;
  /** Share of the open columns that must be fixed at the root for the tree to stop there; above 1: never. */
  readonly shrinkFrom: number;
}

/** `rounding` stops after the root's plans; `between` looks for plans in a part of the whole and proves nothing. */
type Role = 'whole' | 'rounding' | 'between';

/** Share of the objective by which the first plan may miss the bound without a search of its own. */
const WIDE = 0.002;

/** Nodes spent between the relaxation and the first plan. */
const NEIGHBOURS = 60;

class Tree {
  private readonly hunt: Hunt;
  private readonly mostNodes: number;
  private readonly role: Role;
  private readonly shrinkFrom: number;
  private readonly open: Node[];
  private readonly integers: number[] = [];
  private nodes = 0;
  /** Bound of the whole, from the first node. */
  private rootBound = -Infinity;
  private plunging = false;
  private stuck: string | null = null;
  /** What the root's duals say of each column, and the best value they were last asked about. */
  private root: CertifiedBound | null = null;
  private askedAt = Infinity;
  private rest: { readonly lower: Float64Array; readonly upper: Float64Array } | null = null;

  constructor(
    hunt: Hunt,
    mostNodes: number,
    role: Role,
    lower: Float64Array,
    upper: Float64Array,
    shrinkFrom = Infinity,
  ) {
    this.hunt = hunt;
    this.shrinkFrom = shrinkFrom;
    this.mostNodes = mostNodes;
    this.role = role;
    const { linear } = hunt.ground.model;
    linear.integer.forEach((integer, j) => {
      if (integer === 1) this.integers.push(j);
    });
    this.open = [
      {
        lower: lower.slice(),
        upper: upper.slice(),
        level: 0,
        bound: -Infinity,
        branched: -1,
        fraction: 0,
        up: false,
      },
    ];
  }

  grow(): TreeEnd {
    for (let node = this.next(); node; node = this.next()) {
      if (node.bound > (this.hunt.bestValues[0] ?? Infinity)) continue;
      const by = this.nodes > 0 ? this.hunt.stopReason() : null;
      if (by) return { kind: 'stopped', bound: this.boundWith(node), by };
      if (this.nodes >= this.mostNodes) return { kind: 'too-many', bound: this.boundWith(node) };
      this.nodes++;
      const halted = this.visit(node);
      if (halted) return { kind: 'stopped', bound: this.boundWith(node), by: halted };
      const rest = this.shrinks();
      if (rest) return { kind: 'shrinks', bound: this.boundWith(node), ...rest };
      if (this.stuck !== null) return { kind: 'failed', cause: this.stuck };
    }
    return { kind: 'proven' };
  }

  /**
   * Down from a node just split, because the relaxation is still nearly solved there and plans are found deep; else the
   * node of least bound, because it has to be visited whatever the best plan turns out to be.
   */
  private next(): Node | undefined {
    if (this.plunging) {
      this.plunging = false;
      return this.open.pop();
    }
    let least = 0;
    for (let i = 1; i < this.open.length; i++) {
      if ((this.open[i]?.bound ?? 0) <= (this.open[least]?.bound ?? 0)) least = i;
    }
    return this.open.splice(least, 1)[0];
  }

  /** Least value of the first measure that may still be found. */
  private boundWith(node: Node): number {
    const known = Math.min(node.bound, this.hunt.bestValues[0] ?? Infinity);
    const least = this.open.reduce((sofar, { bound }) => Math.min(sofar, bound), known);
    return Math.max(this.rootBound, least);
  }

  private visit(node: Node): 'time' | 'cancel' | 'rounding' | null {
    const { hunt } = this;
    const { session, model } = hunt.ground;
    const { lower, upper } = node;
    let firstBound = node.bound;
    session.setColumnBounds(lower, upper);
    for (let level = node.level; level < hunt.row.length; level++) {
      const measure = hunt.row[level];
      if (!measure) break;
      this.holdEarlier(level);
      session.setCost(model.cost[measure]);
      const relaxed = session.solve(hunt.limits());
      if (relaxed.kind === 'infeasible') return null;
      if (relaxed.kind === 'stopped') return hunt.stopReason() ?? 'time';
      if (relaxed.kind !== 'optimal') {
        this.stuck = relaxed.kind === 'failed' ? relaxed.cause : `the relaxation is ${relaxed.kind}`;
        return null;
      }
      const certificate = hunt.certify(measure, relaxed.rowDual, lower, upper);
      const bound = wholeAbove(certificate.bound);
      if (level === 0) {
        firstBound = Math.max(firstBound, bound);
        if (this.nodes === 1) this.rootBound = bound;
        this.learn(node, certificate.bound);
      }
      if (this.nodes === 1 && this.role !== 'between' && bound < (hunt.bestValues[level] ?? Infinity)) {
        this.roundAtRoot(level, relaxed);
        if (level === 0) hunt.report(Math.min(bound, hunt.bestValues[0] ?? Infinity));
        if (this.role === 'rounding' && bound < (hunt.bestValues[level] ?? Infinity)) {
          return 'rounding';
        }
      }
      if (this.roundsHere() && bound < (hunt.bestValues[level] ?? Infinity)) {
        const plans = roundToPlan(hunt.ground.bench, model, measure, relaxed, hunt.goal(level), false);
        for (const found of plans) {
          if (hunt.offer(found) && this.role === 'whole') hunt.report(this.boundWith(node));
        }
      }
      const best = hunt.bestValues[level] ?? Infinity;
      if (bound > best) return null;
      if (bound === best) continue;
      const last = level === hunt.row.length - 1;
      fixByReducedCost(certificate, last ? best - 1 : best, lower, upper);
      if (this.nodes === 1 && this.role === 'whole') {
        if (level === 0) this.root = certificate;
        if (this.shrinks()) return null;
        this.searchBetween(level, relaxed);
        session.setColumnBounds(lower, upper);
        const better = hunt.bestValues[level] ?? Infinity;
        if (bound >= better) continue;
        if (better < best) fixByReducedCost(certificate, last ? better - 1 : better, lower, upper);
        if (this.shrinks()) return null;
      }
      const branch = this.pick(relaxed.x, lower, upper);
      if (branch < 0) {
        // Whole: a plan. If it brought the best down to this bound, the later measures are asked next.
        if (hunt.offer(hunt.ground.bench.measure(model.choiceOf(relaxed.x))))
          hunt.report(this.boundWith(node));
        if ((hunt.bestValues[level] ?? Infinity) <= bound) {
          session.setColumnBounds(lower, upper);
          continue;
        }
      }
      this.split(node, level, firstBound, branch, relaxed.x);
      return null;
    }
    return null;
  }

  /** Rounding takes as long as a node: often near the root, where plans are still poor, seldom later. */
  private roundsHere(): boolean {
    return this.nodes > 1 && (this.nodes < 20 || this.nodes % 10 === 0);
  }

  private holdEarlier(level: number): void {
    this.hunt.row.forEach((measure, k) => {
      if (k < level) this.hunt.capRow(measure, (this.hunt.bestValues[k] ?? Infinity) + HELD);
      else this.hunt.openRow(measure);
    });
  }

  private roundAtRoot(level: number, relaxed: Parameters<typeof roundToPlan>[3]): void {
    const { hunt } = this;
    const measure = hunt.row[level];
    if (!measure) return;
    const goal = hunt.goal(level);
    for (const found of roundToPlan(hunt.ground.bench, hunt.ground.model, measure, relaxed, goal))
      hunt.offer(found);
  }

  /**
   * Bounds of every plan not worse than the best known, when they settle enough of the columns. Asked again whenever a
   * better plan was found: then what the tree has seen so far is given up for a smaller one.
   */
  private shrinks(): { readonly lower: Float64Array; readonly upper: Float64Array } | null {
    const [best = Infinity] = this.hunt.bestValues;
    if (!this.root || best >= this.askedAt) return this.rest;
    this.askedAt = best;
    const lower = this.hunt.lower.slice();
    const upper = this.hunt.upper.slice();
    const open = lower.reduce((count, low, j) => count + (low === upper[j] ? 0 : 1), 0);
    const fixed = fixByReducedCost(this.root, best, lower, upper);
    if (fixed > 0 && fixed >= this.shrinkFrom * open) this.rest = { lower, upper };
    return this.rest;
  }

  /**
   * The neighbourhood between the relaxation and the best plan: what both carry comes, what neither wants stays, and a
   * small tree over the rest usually holds a plan better than any rounding.
   */
  private searchBetween(level: number, { x, objective }: Parameters<typeof roundToPlan>[3]): void {
    const { hunt } = this;
    const { model } = hunt.ground;
    // Close to the bound the tree itself is the shorter way.
    const gap = (hunt.bestValues[level] ?? Infinity) - objective;
    if (!hunt.local || gap <= WIDE * Math.abs(objective)) return;
    const lower = hunt.lower.slice();
    const upper = hunt.upper.slice();
    const carried = new Set(hunt.local.choice.carried);
    model.pieceColumn.forEach((j, p) => {
      const value = x[j] ?? 0;
      if (carried.has(p) && value > 1 - 1e-6) lower[j] = 1;
      if (!carried.has(p) && value < 1e-6) upper[j] = 0;
    });
    new Tree(hunt, NEIGHBOURS, 'between', lower, upper).grow();
  }

  /** The fractional integer column that promises most on both sides; -1 when there is none. */
  private pick(x: Float64Array, lower: Float64Array, upper: Float64Array): number {
    let best = -1;
    let most = -1;
    for (const j of this.integers) {
      const value = x[j] ?? 0;
      if (lower[j] === upper[j] || value < 1e-6 || value > 1 - 1e-6) continue;
      const score = this.hunt.ground.experience.score(j, value);
      if (score <= most) continue;
      most = score;
      best = j;
    }
    return best;
  }

  private learn({ branched, fraction, up, bound: before }: Node, bound: number): void {
    if (branched < 0 || !Number.isFinite(before)) return;
    const grown = Math.max(0, bound - before) / (up ? 1 - fraction : fraction);
    this.hunt.ground.experience.learn(branched, up, grown);
  }

  /** Two children; the one carrying the piece is visited first, because it leads to plans. */
  private split(node: Node, level: number, bound: number, branch: number, x: Float64Array): void {
    const { lower, upper } = node;
    // A whole point whose recount disagreed with the relaxation: decide the next open column anyway.
    const j = branch >= 0 ? branch : (this.integers.find((one) => lower[one] !== upper[one]) ?? -1);
    if (j < 0) return;
    const fraction = Math.min(1 - 1e-6, Math.max(1e-6, x[j] ?? 0));
    const child = (up: boolean): Node => {
      const below = lower.slice();
      const above = upper.slice();
      if (up) below[j] = 1;
      else above[j] = 0;
      return { lower: below, upper: above, level, bound, branched: level === 0 ? j : -1, fraction, up };
    };
    this.open.push(child(false), child(true));
    this.plunging = true;
  }
}
