import { evaluate } from '@waymend/core/choosing/evaluate';
import type { LimitRow, Need, Outcome, Piece, Problem, TroubleEvent } from '@waymend/core/choosing/problem';
import type { CoverData, KnapsackData } from './read-data.ts';

/** Textbook cases written as choosing problems, so that they go through the planner's whole path. */

export const NOTHING: Problem = {
  pieces: [],
  bundles: [],
  needs: [],
  events: [],
  limits: [],
  must: [],
  fixedLoss: 0,
};

export function owned(id: string, grams: number): Piece {
  return { id, grams, millilitres: 0, cents: 0, owned: true };
}

/** Met by any one of these pieces. */
export function anyOf(pieces: readonly number[]): Need {
  return { kind: 'any', ways: pieces.map((piece) => ({ pieces: [piece], needs: [] })) };
}

/** An event that one need puts right altogether. */
export function worth(id: string, gain: number, need: number): TroubleEvent {
  return { id, loss: gain, options: [{ needs: [need], gain, label: id }] };
}

/** Whole numbers after scaling, or an error: nothing is rounded quietly. */
export function whole(value: number, scale = 1): number {
  const scaled = Math.round(value * scale);
  if (Math.abs(scaled - value * scale) > 1e-6) throw new Error(`${value} x ${scale} is not whole`);
  return scaled;
}

/** Weighted set cover: columns are pieces whose mass is their cost, rows are needs that must be met. */
export function coverProblem({ costs: [cost = []], rows }: CoverData): Problem {
  return {
    ...NOTHING,
    pieces: cost.map((of, j) => owned(`column ${j + 1}`, of)),
    needs: rows.map(anyOf),
    must: rows.map((_, row) => row),
  };
}

/** Knapsack: an event per item that only its own piece puts right; every resource is a limit row. */
export function knapsackProblem({ profits: [profit = []], resources }: KnapsackData, scale = 1): Problem {
  return {
    ...NOTHING,
    pieces: profit.map((_, j) => owned(`item ${j + 1}`, 0)),
    needs: profit.map((_, j) => anyOf([j])),
    events: profit.map((of, j) => worth(`item ${j + 1}`, whole(of, scale), j)),
    limits: resources.map((of, row) => resource(`resource ${row + 1}`, of)),
  };
}

function resource(
  id: string,
  { weights, capacity }: { readonly weights: readonly number[]; readonly capacity: number },
): LimitRow {
  return { id, limit: whole(capacity), carried: weights.map((of, piece) => ({ piece, weight: whole(of) })) };
}

/**
 * Two profits, both maximised. Every item is either taken or left; what is left weighs its second profit, what is taken
 * avoids its first as loss. So loss = all of profit 1 less what is taken of it, and grams = the same of profit 2: the front
 * of the one is the front of the other.
 */
export function knapsackOfTwoProblem({ profits, resources }: KnapsackData): Problem {
  const [first = [], second = []] = profits;
  const items = first.length;
  return {
    ...NOTHING,
    pieces: [
      ...first.map((_, j) => owned(`take ${j + 1}`, 0)),
      ...second.map((of, j) => owned(`leave ${j + 1}`, of)),
    ],
    needs: [...first.map((_, j) => anyOf([j])), ...first.map((_, j) => anyOf([j, items + j]))],
    events: first.map((of, j) => worth(`item ${j + 1}`, of, j)),
    limits: resources.map((of, row) => resource(`resource ${row + 1}`, of)),
    must: first.map((_, j) => items + j),
  };
}

/**
 * Set cover with two costs, both minimised. A column's mass is its first cost; leaving it (a piece of no mass that excludes
 * the column) avoids its second cost as loss.
 */
export function coverOfTwoProblem({ costs, rows }: CoverData): Problem {
  const [first = [], second = []] = costs;
  const columns = first.length;
  return {
    ...NOTHING,
    pieces: [
      ...first.map((of, j) => owned(`take ${j + 1}`, of)),
      ...first.map((_, j) => owned(`leave ${j + 1}`, 0)),
    ],
    needs: [...rows.map(anyOf), ...first.map((_, j) => anyOf([columns + j]))],
    events: second.map((of, j) => worth(`column ${j + 1}`, of, rows.length + j)),
    limits: first.map((_, j) => ({
      id: `column ${j + 1}: one or the other`,
      limit: 1,
      carried: [
        { piece: j, weight: 1 },
        { piece: columns + j, weight: 1 },
      ],
    })),
    must: rows.map((_, row) => row),
  };
}

/** One kind of part: how many can be had, what a copy takes of each resource, and the loss with s copies, s = 0, 1, ... */
export interface PartKind {
  readonly copies: number;
  readonly takes: readonly number[];
  /** Losses in nepers or whatever is added up; may not rise with s. */
  readonly loss: (stock: number) => number;
}

/**
 * Parts whose losses add up, within limits: an event per kind of part, an option per stock level. Losses are rounded to
 * whole multiples of 1/scale. `least` copies of each kind must come. Pieces of kind k are named "k.copy".
 */
export function stockProblem(
  kinds: readonly PartKind[],
  capacities: readonly number[],
  scale: number,
  least = 0,
): Problem {
  const pieces: Piece[] = [];
  const needs: Need[] = [];
  const events: TroubleEvent[] = [];
  const must: number[] = [];
  const carried: { readonly piece: number; readonly weight: number }[][] = capacities.map(() => []);
  kinds.forEach(({ copies, takes, loss }, kind) => {
    const first = pieces.length;
    for (let copy = 0; copy < copies; copy++) {
      takes.forEach((weight, row) => carried[row]?.push({ piece: pieces.length, weight }));
      pieces.push(owned(`${kind}.${copy}`, takes.at(-1) ?? 0));
    }
    const from = Array.from({ length: copies }, (_, copy) => ({ piece: first + copy, units: 1 }));
    const base = Math.round(loss(least) * scale);
    const options = [];
    for (let stock = Math.max(1, least); stock <= copies; stock++) {
      needs.push({ kind: 'enough', units: stock, from });
      if (stock === least) must.push(needs.length - 1);
      const gain = base - Math.round(loss(stock) * scale);
      options.push({ needs: [needs.length - 1], gain, label: `${stock} of kind ${kind}` });
    }
    events.push({ id: `kind ${kind}`, loss: base, options });
  });
  return {
    ...NOTHING,
    pieces,
    needs,
    events,
    must,
    limits: capacities.map((limit, row) => ({ id: `resource ${row}`, limit, carried: carried[row] ?? [] })),
  };
}

/** The same within one budget for losses that fall by less with every copy: each copy is an event that only it puts right. */
export function copiesAsEvents(kinds: readonly PartKind[], budget: number, scale: number): Problem {
  const copies = kinds.flatMap(({ copies: count, takes, loss }, kind) =>
    Array.from({ length: count }, (_, copy) => ({
      id: `${kind}.${copy}`,
      weight: takes[0] ?? 0,
      gain: Math.round(loss(copy) * scale) - Math.round(loss(copy + 1) * scale),
    })),
  );
  const atBest = kinds.reduce((sum, { copies: count, loss }) => sum + Math.round(loss(count) * scale), 0);
  return {
    ...NOTHING,
    pieces: copies.map(({ id, weight }) => owned(id, weight)),
    needs: copies.map((_, p) => anyOf([p])),
    events: copies.map(({ id, gain }, p) => worth(id, gain, p)),
    limits: [
      { id: 'budget', limit: budget, carried: copies.map(({ weight }, piece) => ({ piece, weight })) },
    ],
    fixedLoss: atBest,
  };
}

/** How many of each kind a choice of `stockProblem` carries. */
export function stockOf(problem: Problem, carried: readonly number[], kinds: number): readonly number[] {
  const stock = new Array<number>(kinds).fill(0);
  for (const p of carried) {
    const kind = Number(problem.pieces[p]?.id.split('.')[0]);
    stock[kind] = (stock[kind] ?? 0) + 1;
  }
  return stock;
}

/**
 * The proven outcome, after an exact recount of the choice; anything else is an error that says what came instead. With the
 * aim must-do "the score is not looked at" (Aim), and its loss is not compared.
 */
export function proven(
  problem: Problem,
  outcome: Outcome,
  aim: 'scored' | 'must-do' = 'scored',
): Extract<Outcome, { kind: 'proven' }> {
  if (outcome.kind !== 'proven') throw new Error(`not proven: ${JSON.stringify(outcome)}`);
  const recount = evaluate(problem, outcome.choice);
  if (!recount.feasible) throw new Error(`not feasible: ${JSON.stringify(recount.faults)}`);
  const sameLoss = aim === 'must-do' || recount.loss === outcome.loss;
  if (!sameLoss || recount.grams !== outcome.grams) {
    throw new Error(`${outcome.loss}, ${outcome.grams} recounts as ${recount.loss}, ${recount.grams}`);
  }
  return outcome;
}
