import type { PieceIndex } from '../choosing/problem.ts';
import { asWays } from './apart.ts';
import { isAtLeast } from './grade.ts';
import type { Met, NeedGraph } from './need-graph.ts';
import type { FunctionNeed, Grade, Together } from './scene.ts';
import type { Held, Toolbox } from './toolbox.ts';

/** Functions that keep people from harm: never met by a last resort, whoever asks (M4). */
const GUARDS: ReadonlySet<string> = new Set(['support', 'eyes']);
/** Litres are counted in whole millilitres, so that they add up exactly. */
const ML_PER_LITRE = 1000;

/**
 * A function at a grade or better (M2 "Other functions"): by belongings whose list says so, by enough of them where several
 * are needed at once, or by a row of the substitution table whose functions are all there.
 */
export function functionNeed(
  graph: NeedGraph,
  toolbox: Toolbox,
  together: readonly Together[],
  need: FunctionNeed,
  grade: Grade,
): Met {
  const asked = isGuarded(need) && grade === 'last-resort' ? 'with-care' : grade;
  const direct = directNeed(graph, toolbox, need, asked);
  // A row stands in for one of a thing, not for several at once.
  const rows = (need.count ?? 1) > 1 ? [] : together.filter((row) => serves(row, need, asked));
  return graph.any([
    ...asWays(direct),
    ...rows.flatMap((row) =>
      asWays(graph.all(row.needs.map((part) => directNeed(graph, toolbox, part, asked)))),
    ),
  ]);
}

/** Pieces that give a function alone, at a grade or better. */
export function functionPieces(toolbox: Toolbox, need: FunctionNeed, grade: Grade): readonly PieceIndex[] {
  return [...mostByPiece(givers(toolbox, need, grade), () => 1).keys()];
}

function directNeed(graph: NeedGraph, toolbox: Toolbox, need: FunctionNeed, grade: Grade): Met {
  if (isGuarded(need) && grade === 'last-resort') return directNeed(graph, toolbox, need, 'with-care');
  if (need.fn === 'fluid') {
    // Fluids run together; nothing else does: two small stands do not make a big one.
    const asked = Math.max(1, Math.round((need.amount ?? 0) * ML_PER_LITRE));
    const litres = mostByPiece(givers(toolbox, { ...need, amount: 0 }, grade), (offer) =>
      Math.round((offer.amount ?? 0) * ML_PER_LITRE),
    );
    return need.amount === undefined
      ? graph.anyPiece([...litres.keys()])
      : graph.enough(asked, unitsFrom(litres));
  }
  return graph.enough(
    need.count ?? 1,
    unitsFrom(mostByPiece(givers(toolbox, need, grade), (offer) => offer.pieces)),
  );
}

/** Lines that give the function with at least the amount asked, which is not below their range. No jack ever supports, whatever its list says (M4). */
function givers(toolbox: Toolbox, need: FunctionNeed, grade: Grade): readonly Held<'does'>[] {
  const jacks = need.fn === 'support' ? new Set(toolbox.doing('lift').map((held) => held.piece)) : null;
  return toolbox.doing(need.fn).filter(({ piece, offer }) => {
    if (need.of !== undefined && offer.of !== need.of) return false;
    if (!isAtLeast(offer.grade, grade) || (offer.amount ?? 0) < (need.amount ?? 0)) return false;
    if (need.amount !== undefined && need.amount < (offer.from ?? 0)) return false;
    return jacks?.has(piece) !== true;
  });
}

/** Each piece counts once, by the line that gives most. */
function mostByPiece(
  lines: readonly Held<'does'>[],
  units: (offer: Held<'does'>['offer']) => number,
): ReadonlyMap<PieceIndex, number> {
  const most = new Map<PieceIndex, number>();
  for (const { piece, offer } of lines) most.set(piece, Math.max(most.get(piece) ?? 0, units(offer)));
  return most;
}

function unitsFrom(most: ReadonlyMap<PieceIndex, number>): { piece: PieceIndex; units: number }[] {
  return [...most].map(([piece, units]) => ({ piece, units }));
}

function serves(row: Together, need: FunctionNeed, grade: Grade): boolean {
  if (row.wanted.fn !== need.fn || !isAtLeast(row.grade, grade)) return false;
  if ((need.amount ?? 0) > (row.upTo ?? Number.POSITIVE_INFINITY)) return false;
  if (need.of !== undefined && row.wanted.of !== need.of) return false;
  return need.fn !== 'support' || !row.needs.some((part) => part.fn === 'lift');
}

function isGuarded(need: FunctionNeed): boolean {
  return need.safety === true || GUARDS.has(need.fn);
}
