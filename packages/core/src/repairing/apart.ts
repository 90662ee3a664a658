import type { NeedIndex, PieceIndex, Way } from '../choosing/problem.ts';
import type { Met, NeedGraph } from './need-graph.ts';

/**
 * Ways to use one of `pieces` and, at the same moment and with other pieces, to meet `rest`. Exact: a piece that could be
 * both is tried as the one, with the rest met without it.
 */
export function apart(graph: NeedGraph, pieces: readonly PieceIndex[], rest: Met): readonly Way[] {
  if (rest === null || pieces.length === 0) return [];
  const support = graph.supportOf(rest);
  const clear = graph.anyPiece(pieces.filter((piece) => !support.has(piece)));
  const ways: Way[] = clear === null ? [] : [{ pieces: [], needs: [clear, rest] }];
  for (const piece of pieces) {
    if (!support.has(piece)) continue;
    const left = graph.without(rest, piece);
    if (left !== null) ways.push({ pieces: [piece], needs: [left] });
  }
  return ways;
}

/** Up to so many pairs are written out. */
const FEW_PAIRS = 12;

/**
 * Ways to use one of `a` and another of `b` at the same moment. Two distinct pieces can be told off to the two sides exactly
 * when each side has a piece and the two sides together have at least two (Hall's condition for two sets), so that many
 * pairs become one way of three needs.
 */
export function pair(graph: NeedGraph, a: readonly PieceIndex[], b: readonly PieceIndex[]): readonly Way[] {
  const inA = new Set(a);
  const both = [...new Set([...a, ...b])];
  const sides = [graph.anyPiece(a), graph.anyPiece(b)].filter((side) => side !== null);
  if (sides.length < 2 || both.length < 2) return [];
  if (!b.some((piece) => inA.has(piece))) return [{ pieces: [], needs: sides }];
  if (a.length * b.length <= FEW_PAIRS)
    return a.flatMap((one) =>
      b.flatMap((other): Way[] => (one === other ? [] : [{ pieces: [one, other], needs: [] }])),
    );
  const two = graph.enough(
    2,
    both.map((piece) => ({ piece, units: 1 })),
  );
  return two === null ? [] : [{ pieces: [], needs: [...sides, two] }];
}

/** A way that only asks for a need; none when nothing meets it. */
export function asWays(need: Met): readonly Way[] {
  return need === null ? [] : [{ pieces: [], needs: [need satisfies NeedIndex] }];
}
