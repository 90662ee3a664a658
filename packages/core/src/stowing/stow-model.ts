import { LinearBuilder } from '../choosing/linear-builder.ts';
import type { LinearModel } from '../choosing/solver-port.ts';
import type { Layout } from './lay-out.ts';
import { bagRows } from './model-bags.ts';
import type { Draft, Lies, Term } from './model-draft.ts';
import { atMost } from './model-draft.ts';
import { companyRows } from './model-company.ts';
import { orderEqualBags } from './model-order.ts';
import { AT, PieceCosts } from './piece-costs.ts';
import { takes } from './spots.ts';
import { LEVEL_COUNT } from './stow-rules.ts';

/**
 * Stowing as an assignment model, with every bag in the berth it stands in: one binary for each piece and place, one for each
 * bag that comes along.
 */
export interface StowModel {
  readonly linear: LinearModel;
  /** By level. */
  readonly cost: readonly Float64Array[];
  readonly lies: readonly Lies[];
  readonly liesOf: readonly (readonly Lies[])[];
  /** Unplaced, by piece; -1 where a piece was put by hand. */
  readonly without: Int32Array;
  /** Whether a bag comes along, by bag. */
  readonly rides: readonly number[];
}

export function stowModel(layout: Layout): StowModel {
  const { problem, spots, allowed } = layout;
  const builder = new LinearBuilder();
  const charges: [number, number, number][] = [];
  const charge = (level: number, column: number, cost: number): void => {
    if (cost !== 0) charges.push([level, column, cost]);
  };
  const liesOf = problem.pieces.map((piece, p) =>
    (allowed[p] ?? []).map((s) => ({ p, piece, s, column: builder.column(0, 1, true) })),
  );
  const lies = liesOf.flat();
  const without = Int32Array.from(problem.pieces, (piece, p) =>
    piece.byHand === undefined || (allowed[p] ?? []).length === 0 ? builder.column(0, 1, true) : -1,
  );
  const rides = problem.bags.map(() => builder.column(0, 1, true));
  for (const p of problem.pieces.keys()) {
    const terms: Term[] = (liesOf[p] ?? []).map(({ column }) => [column, 1]);
    const none = without[p] ?? -1;
    if (none >= 0) {
      terms.push([none, 1]);
      charge(AT.unplaced, none, 1);
    }
    builder.row(1, 1, terms);
  }
  const byBag = new Map<number, Lies[]>();
  for (const lie of lies) {
    const b = spots[lie.s]?.bag ?? -1;
    const key = lie.p * (problem.bags.length + 1) + b;
    byBag.set(key, [...(byBag.get(key) ?? []), lie]);
  }
  const inBag = (p: number, b: number): readonly Lies[] => byBag.get(p * (problem.bags.length + 1) + b) ?? [];
  const liesIn = spots.map((): Lies[] => []);
  for (const lie of lies) liesIn[lie.s]?.push(lie);
  const draft: Draft = { layout, builder, liesOf, liesIn, rides, inBag, charge };
  pieceCosts(draft);
  pocketRows(draft);
  bagRows(draft);
  companyRows(draft);
  orderEqualBags(draft);
  const cost = Array.from({ length: LEVEL_COUNT }, () => new Float64Array(builder.columns));
  for (const [level, column, n] of charges) {
    const of = cost[level];
    if (of !== undefined) of[column] = (of[column] ?? 0) + n;
  }
  return { linear: builder.build(new Float64Array(builder.columns)), cost, lies, liesOf, without, rides };
}

/** What each piece counts by itself. */
function pieceCosts({ layout, liesOf, charge }: Draft): void {
  const { spots, homes } = layout;
  const costs = new PieceCosts(layout);
  for (const { p, s, column } of liesOf.flat()) {
    const spot = spots[s];
    if (spot === undefined) continue;
    const [home = -1] = spot.bag < 0 ? [spot.berth] : (homes[spot.bag] ?? []);
    for (const [level, n] of costs.of(p, s, home).entries())
      if (level !== AT.unplaced) charge(level, column, n);
  }
}

/** Room and limit of every pocket. */
function pocketRows({ layout, builder, liesIn }: Draft): void {
  const { spots, spotRoom, spotLimit } = layout;
  for (const [s, spot] of spots.entries()) {
    if (spot.pocket < 0) continue;
    const here = liesIn[s] ?? [];
    atMost(
      builder,
      here.map(({ piece, column }) => [column, takes(piece, spot)]),
      spotRoom[s] ?? 0,
    );
    atMost(
      builder,
      here.map(({ piece, column }) => [column, piece.grams]),
      spotLimit[s] ?? 0,
    );
  }
}
