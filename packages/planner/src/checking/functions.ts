import type { FunctionNeed, Grade, Together } from '@waymend/core/repairing/scene';
import type { Bench } from './bench.ts';
import type { Mark } from './marks.ts';
import { best, rank, worst } from './marks.ts';

/** Everything that is not turning (M2 "Other functions"), written again for the checker. */

const GRADES: readonly Grade[] = ['proper', 'with-care', 'last-resort'];

export interface Giver {
  readonly piece: number;
  readonly grade: Grade;
  /** How many of it can be used at the same moment. */
  readonly atOnce: number;
  readonly amount: number;
  /** Below this it is of no use. */
  readonly least: number;
}

/** Every piece that gives this function, once per matching line of its list. */
export function functionPieces(bench: Bench, need: FunctionNeed): readonly Giver[] {
  return (bench.byFunction.get(need.fn) ?? []).flatMap(({ piece, offer }) => {
    // A need that names no `of` takes the plain function or any `of`; one that names it takes that and no other.
    if (need.of !== undefined && offer.of !== need.of) return [];
    // No jack ever holds a vehicle that somebody is under, whatever its entry says (M4).
    if (need.fn === 'support' && lifts(bench, piece)) return [];
    return [
      { piece, grade: offer.grade, atOnce: offer.pieces, amount: offer.amount ?? 0, least: offer.from ?? 0 },
    ];
  });
}

/** The best grade at which the pieces on the bench meet the need, null when they do not. */
export function functionMark(bench: Bench, need: FunctionNeed, together: readonly Together[]): Mark {
  const direct = directMark(bench, need);
  if (direct === 'proper' || (need.count ?? 1) > 1) return direct;
  const rows = together.filter((row) => serves(row, need));
  const joint = best(
    rows.map((row) => worst(row.grade, ...row.needs.map((part) => directMark(bench, part)))),
  );
  return better(direct, safe(need, joint));
}

function directMark(bench: Bench, need: FunctionNeed): Mark {
  const givers = functionPieces(bench, need);
  return safe(need, GRADES.find((grade) => isMet(givers, need, grade)) ?? null);
}

function isMet(givers: readonly Giver[], need: FunctionNeed, grade: Grade): boolean {
  const good = givers.filter((g) => rank(g.grade) >= rank(grade));
  const amount = need.amount ?? 0;
  // Fluids run together; nothing else does: two small stands do not make a big one.
  if (need.fn === 'fluid') return sumByPiece(good, (g) => g.amount) >= amount && good.length > 0;
  const enough = good.filter((g) => g.amount >= amount && (need.amount === undefined || g.least <= amount));
  return sumByPiece(enough, (g) => g.atOnce) >= (need.count ?? 1);
}

/** Each piece counts once, by the best of its lines. */
function sumByPiece(givers: readonly Giver[], of: (g: Giver) => number): number {
  const most = new Map<number, number>();
  for (const g of givers) most.set(g.piece, Math.max(most.get(g.piece) ?? 0, of(g)));
  return [...most.values()].reduce((sum, n) => sum + n, 0);
}

function serves(row: Together, need: FunctionNeed): boolean {
  if (row.wanted.fn !== need.fn) return false;
  if (row.upTo !== undefined && (need.amount ?? 0) > row.upTo) return false;
  if (need.of !== undefined && row.wanted.of !== need.of) return false;
  return need.fn !== 'support' || !row.needs.some((part) => part.fn === 'lift');
}

/** What keeps people from harm is never left to a last resort (M4). */
function safe(need: FunctionNeed, mark: Mark): Mark {
  const guards = need.safety === true || need.fn === 'support' || need.fn === 'eyes';
  return guards && mark === 'last-resort' ? null : mark;
}

function better(a: Mark, b: Mark): Mark {
  return rank(a) >= rank(b) ? a : b;
}

function lifts(bench: Bench, piece: number): boolean {
  return bench.pieces[piece]?.offers.some((o) => o.kind === 'does' && o.fn === 'lift') ?? false;
}
