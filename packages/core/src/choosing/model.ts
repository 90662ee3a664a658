import { LinearBuilder } from './linear-builder.ts';
import { addEvents, addLevels } from './model-events.ts';
import { addNeeds } from './model-needs.ts';
import { addSupply } from './model-supply.ts';
import type { Supply } from './model-supply.ts';
import type { Measure } from './measures.ts';
import type { Choice, Problem } from './problem.ts';
import { Implications, needsAsAtoms } from './reduce/implied.ts';
import type { Reduced } from './reduce/reduce.ts';
import type { LinearModel } from './solver-port.ts';

/** A problem as a linear model, with one cost vector per measure and a row to hold each measure fast in later solves. */
export interface ChoiceModel {
  readonly linear: LinearModel;
  readonly constantLoss: number;
  /** Cost vector of each measure; minimising `cost.loss` gives the loss less `constantLoss`. */
  readonly cost: Readonly<Record<Measure, Float64Array>>;
  /** Row whose activity is the measure, open until bounded; -1 where the measure is never held. */
  readonly row: Readonly<Record<Measure, number>>;
  /** tie = grams x tieFactor + pieces; 0 where that would not stay exact. */
  readonly tieFactor: number;
  /** Row of each limit. */
  readonly limitRows: readonly number[];
  /** Column of each piece. */
  readonly pieceColumn: Int32Array;
  readonly supply: Supply;
  /** Columns of needs; of ways by need and of options by event, -1 (or nothing) where they have none of their own. */
  readonly needColumn: Int32Array;
  readonly wayColumn: readonly (readonly number[])[];
  readonly optionColumn: readonly (readonly number[])[];
  /** Column or need, way, option it stands for, for written-out models. */
  readonly names: readonly string[];
  /** Reads a point whose integer columns are whole (within a half). */
  readonly choiceOf: (x: ArrayLike<number>) => Choice;
}

export interface ModelForm {
  /**
   * `plain`: as M6 states it: a variable per need, way, option and gain level; one row per (way, piece), (option, need).
   * `tight`: the same integer points, fewer variables and a better relaxation (see ./model-needs.ts, ./model-events.ts).
   */
  readonly form: 'plain' | 'tight';
  /** Leaves out the rows for earlier aims. */
  readonly bare?: boolean;
  /** Cents are among the measures, even if no column of this model costs any. Default: whether one does. */
  readonly priced?: boolean;
}

export function buildModel(reduced: Reduced, { form, bare = false, priced }: ModelForm): ChoiceModel {
  const { problem } = reduced;
  const builder = new LinearBuilder();
  const names: string[] = [];
  const pieceColumn = Int32Array.from(problem.pieces, (piece, p) => {
    names.push(`x_${p}_${piece.id}`);
    return builder.column(piece.pin === 'always' ? 1 : 0, piece.pin === 'never' ? 0 : 1, true);
  });
  const supply = addSupply(problem, builder, pieceColumn, names);
  const implications = new Implications(problem.pieces.length, needsAsAtoms(problem));
  const { needColumn, wayColumn } = addNeeds(problem, builder, pieceColumn, form, names, implications);
  for (const n of problem.must) builder.require(needColumn[n] ?? 0);

  const gains: [number, number][] = [];
  let optionColumn: readonly (readonly number[])[] = [];
  if (form === 'plain') addLevels(problem, builder, needColumn, gains, names);
  else optionColumn = addEvents(problem, builder, needColumn, gains, names, implications);
  for (const [first, second] of reduced.ordered) {
    builder.row(-Infinity, 0, [
      [pieceColumn[second] ?? 0, 1],
      [pieceColumn[first] ?? 0, -1],
    ]);
  }
  const limitRows = problem.limits.map((limit) =>
    builder.row(-Infinity, limit.limit, [
      ...limit.carried.map(({ piece, weight }) => [pieceColumn[piece] ?? 0, weight] as const),
      ...(limit.bought ?? []).flatMap(({ piece, weight }) => {
        const column = supply.buyColumn[piece] ?? -1;
        return column < 0 ? [] : [[column, weight] as const];
      }),
      ...(limit.bundles ?? []).map(
        ({ bundle, weight }) => [supply.bundleColumn[bundle] ?? 0, weight] as const,
      ),
    ]),
  );

  const { cost, tieFactor } = costs(reduced, builder.columns, gains, pieceColumn, supply);
  // The last measure of a row is never held, so without prices only loss and grams ever are.
  const held: readonly Measure[] = bare
    ? []
    : (priced ?? cost.cents.some((cents) => cents !== 0))
      ? ['loss', 'grams', 'pieces', 'tie']
      : ['loss', 'grams'];
  const row: Record<Measure, number> = { loss: -1, grams: -1, pieces: -1, tie: -1, cents: -1 };
  for (const measure of held) {
    const terms = Array.from(cost[measure], (value, column) => [column, value] as const);
    row[measure] = builder.row(
      -Infinity,
      Infinity,
      terms.filter(([, value]) => value !== 0),
    );
  }
  return {
    row,
    linear: builder.build(cost.loss),
    constantLoss: problem.fixedLoss + problem.events.reduce((sum, { loss }) => sum + loss, 0),
    cost,
    tieFactor,
    limitRows,
    pieceColumn,
    supply,
    needColumn,
    wayColumn,
    optionColumn,
    names,
    choiceOf: (x) => choiceOf(problem, pieceColumn, supply, x),
  };
}

/** A sum of whole numbers up to this, each off by a solver's 1e-9, stays within a half of the truth. */
const MOST_EXACT = 3e8;

function costs(
  { problem, counts, cents }: Reduced,
  size: number,
  gains: readonly (readonly [number, number])[],
  pieceColumn: Int32Array,
  supply: Supply,
): { readonly cost: Record<Measure, Float64Array>; readonly tieFactor: number } {
  const cost: Record<Measure, Float64Array> = {
    loss: new Float64Array(size),
    grams: new Float64Array(size),
    pieces: new Float64Array(size),
    tie: new Float64Array(size),
    cents: new Float64Array(size),
  };
  for (const [column, gain] of gains) cost.loss[column] = (cost.loss[column] ?? 0) - gain;
  problem.pieces.forEach((piece, p) => {
    const column = pieceColumn[p] ?? 0;
    cost.grams[column] = piece.grams;
    cost.pieces[column] = counts[p] ?? 1;
    cost.cents[column] = cents[p] ?? 0;
    const buy = supply.buyColumn[p] ?? -1;
    if (buy >= 0) cost.cents[buy] = piece.cents ?? 0;
  });
  problem.bundles.forEach((bundle, b) => {
    const column = supply.bundleColumn[b] ?? 0;
    if (bundle.carry === 'whole') cost.grams[column] = bundle.caseGrams;
    if (!bundle.owned) cost.cents[column] = bundle.cents;
  });
  const total = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);
  const factor = total(cost.pieces) + 1;
  const tieFactor = total(cost.grams) * factor <= MOST_EXACT ? factor : 0;
  if (tieFactor > 0) cost.tie = cost.grams.map((grams, j) => grams * tieFactor + (cost.pieces[j] ?? 0));
  return { cost, tieFactor };
}

function choiceOf(problem: Problem, pieceColumn: Int32Array, supply: Supply, x: ArrayLike<number>): Choice {
  const carried: number[] = [];
  const bought: number[] = [];
  const bundles: number[] = [];
  problem.bundles.forEach((_, b) => {
    if ((x[supply.bundleColumn[b] ?? 0] ?? 0) > 0.5) bundles.push(b);
  });
  problem.pieces.forEach((piece, p) => {
    if ((x[pieceColumn[p] ?? 0] ?? 0) <= 0.5) return;
    carried.push(p);
    // Bought exactly when nothing else brings it: idle purchases are never wanted.
    const brought = piece.owned || (piece.bundles ?? []).some((b) => bundles.includes(b));
    if (!brought && piece.cents !== null) bought.push(p);
  });
  return { carried, bought, bundles };
}
