import type { KitState } from '@waymend/core/choosing/kit-state';
import type { NeedIndex, PieceIndex } from '@waymend/core/choosing/problem';
import type { Completion } from '@waymend/core/explaining/completion';
import { cheapestCompletion } from '@waymend/core/explaining/completion';
import type { CureAnswer } from '../answer/plan-answer.ts';
import type { Reading } from './reading.ts';
import { ownerSaysNever } from './reading.ts';

/** Out of the question. */
const NO = Number.POSITIVE_INFINITY;
/** Money first, then grams: no cure is heavy enough to cost a cent. */
const CENT = 1e7;

/** What each piece costs to add, by the question asked; worked out once for a kit. */
export interface Costs {
  /** From home only, in grams. */
  readonly carry: Float64Array;
  /** From home, made ready, or bought: least grams, and least money then grams. */
  readonly grams: Float64Array;
  readonly money: Float64Array;
  readonly ready: Float64Array;
}

export function costsOf(reading: Reading): Costs {
  const n = reading.pieces.length;
  const costs = {
    carry: new Float64Array(n),
    grams: new Float64Array(n),
    money: new Float64Array(n),
    ready: new Float64Array(n),
  };
  reading.pieces.forEach((piece, p) => {
    const unready = piece.id.startsWith('ready:');
    const never = ownerSaysNever(piece);
    const buyable = !piece.owned && !unready && !never && piece.cents !== null;
    costs.carry[p] = piece.owned && !never ? piece.grams : NO;
    costs.ready[p] = (piece.owned && !never) || unready ? piece.grams : NO;
    costs.grams[p] = (piece.owned && !never) || buyable ? piece.grams : NO;
    costs.money[p] = piece.owned && !never ? piece.grams : buyable ? piece.cents * CENT + piece.grams : NO;
  });
  return costs;
}

/** Cheapest ways, by grams and by money, to complete one of several sets of needs with this kit. */
export function cures(
  reading: Reading,
  state: KitState,
  choices: readonly (readonly NeedIndex[])[],
  costs: Costs,
): readonly CureAnswer[] {
  const carry = cheapest(state, choices, costs.carry);
  const ready = carry !== null ? null : cheapest(state, choices, costs.ready);
  const light = carry !== null ? null : cheapest(state, choices, costs.grams);
  const cheap = carry !== null ? null : cheapest(state, choices, costs.money);
  const out: CureAnswer[] = [];
  if (carry !== null) out.push(cure(reading, 'carry', carry));
  if (ready !== null) out.push(cure(reading, 'make-ready', ready));
  if (cheap !== null) out.push(cure(reading, 'buy', cheap));
  if (light !== null && cheap !== null && massOf(reading, light) < massOf(reading, cheap))
    out.push(cure(reading, 'buy', light));
  return out;
}

/** Marks the best of a gap's cures by grams and by money. */
export function marked(list: readonly CureAnswer[]): readonly CureAnswer[] {
  const grams = Math.min(...list.map((c) => c.grams));
  const money = Math.min(...list.map((c) => c.cents));
  return list.map((c) => ({
    ...c,
    best: [
      ...(c.grams === grams ? (['grams'] as const) : []),
      ...(c.cents === money ? (['money'] as const) : []),
    ],
  }));
}

function cheapest(
  state: KitState,
  choices: readonly (readonly NeedIndex[])[],
  cost: Float64Array,
): Completion | null {
  let best: Completion | null = null;
  for (const needs of choices) {
    const found = cheapestCompletion(state, needs, cost, best?.cost ?? Number.POSITIVE_INFINITY);
    if (found !== null && (best === null || found.cost < best.cost)) best = found;
  }
  return best;
}

function massOf(reading: Reading, completion: Completion): number {
  return completion.pieces.reduce((sum, p) => sum + (reading.pieces[p]?.grams ?? 0), 0);
}

function cure(reading: Reading, kind: 'carry' | 'make-ready' | 'buy', completion: Completion): CureAnswer {
  const pieces = completion.pieces.flatMap((p) => reading.pieces[p] ?? []);
  const name = (list: readonly { readonly name: string }[]) => listed(list.map((p) => p.name));
  const home = pieces.filter((p) => p.owned);
  const fetched = pieces.filter((p) => !p.owned);
  const bring = home.length > 0 ? ` and bring ${name(home)}` : '';
  const words = {
    carry: `Carry ${name(home)} from home`,
    'make-ready': `Make ready ${name(fetched)}${bring}`,
    buy: `Buy ${name(fetched)}${bring}`,
  }[kind];
  return {
    kind,
    words,
    items: pieces.map((p) => p.id),
    grams: massOf(reading, completion),
    cents: fetched.reduce((sum, p) => sum + (p.cents ?? 0), 0),
    best: [],
  };
}

function listed(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const words = [...counts].map(([name, n]) => (n > 1 ? `${n} x ${name}` : name));
  if (words.length <= 1) return words[0] ?? 'nothing';
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1] ?? ''}`;
}

/** Pieces that a completion would use, by piece, with the others it needs: what "helps only together with" is read from. */
export function companyIn(
  found: readonly (readonly PieceIndex[])[],
  into: Map<PieceIndex, readonly PieceIndex[]>,
): void {
  for (const pieces of found) {
    for (const p of pieces) {
      const others = pieces.filter((q) => q !== p);
      const known = into.get(p);
      if (known === undefined || others.length < known.length) into.set(p, others);
    }
  }
}
