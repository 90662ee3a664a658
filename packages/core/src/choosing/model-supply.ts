import type { LinearBuilder } from './linear-builder.ts';
import type { Problem } from './problem.ts';

/** Columns of purchases and sets; -1 where there is none. */
export interface Supply {
  readonly buyColumn: Int32Array;
  readonly bundleColumn: Int32Array;
}

/**
 * How pieces are had. carried <= bought + sets that bring it, for whatever is not there for the taking; a set that comes
 * whole brings every member. Purchases need no integrality: at whole carried and set values the least purchase is whole.
 */
export function addSupply(
  problem: Problem,
  builder: LinearBuilder,
  pieceColumn: Int32Array,
  names: string[],
): Supply {
  const bundleColumn = Int32Array.from(problem.bundles, (bundle, b) => {
    names.push(`b_${b}_${bundle.id}`);
    return builder.column(0, 1, true);
  });
  const buyColumn = new Int32Array(problem.pieces.length).fill(-1);
  problem.pieces.forEach((piece, p) => {
    const x = pieceColumn[p] ?? 0;
    const bundles = [...new Set(piece.bundles ?? [])];
    const wholes = bundles.filter((b) => problem.bundles[b]?.carry === 'whole');
    for (const b of wholes) {
      builder.row(0, Infinity, [
        [x, 1],
        [bundleColumn[b] ?? 0, -1],
      ]);
    }
    if (piece.owned && !wholes.some((b) => problem.bundles[b]?.owned)) return;
    const terms: [number, number][] = bundles.map((b) => [bundleColumn[b] ?? 0, -1]);
    if (!piece.owned && piece.cents !== null) {
      const buy = builder.column(0, 1, false);
      names.push(`buy_${p}_${piece.id}`);
      buyColumn[p] = buy;
      terms.push([buy, -1]);
    }
    builder.row(-Infinity, 0, [[x, 1], ...terms]);
  });
  return { buyColumn, bundleColumn };
}
