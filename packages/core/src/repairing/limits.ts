import type { LimitRow } from '../choosing/problem.ts';
import type { Scene, ScenePiece } from './scene.ts';

/**
 * The limits of a scene as rows of whole numbers (M6): 'mass', 'volume', 'money', 'berth <id>', 'load <id>', in grams,
 * millilitres and cents. Cases of sets carried whole count where kit without a berth rides. What a piece adds to an axle is
 * rounded up to whole grams, so that no plan overloads one: finer units would be exact, but rows of numbers that large are
 * more than a solver in double precision can prove anything about.
 */
export function limitRows(scene: Scene): readonly LimitRow[] {
  const { limits, bundles } = scene;
  const weighed = (weight: (piece: ScenePiece) => number): LimitRow['carried'] =>
    scene.pieces.flatMap((piece, index) => {
      const grams = weight(piece);
      return grams === 0 ? [] : [{ piece: index, weight: grams }];
    });
  const cases = (weight: (bundle: Scene['bundles'][number]) => number) =>
    bundles.flatMap((bundle, index) => {
      const grams = bundle.carry === 'whole' ? weight(bundle) : 0;
      return grams === 0 ? [] : [{ bundle: index, weight: grams }];
    });
  const rows: LimitRow[] = [];
  if (limits.grams !== null)
    rows.push({
      id: 'mass',
      limit: limits.grams,
      carried: weighed((piece) => piece.grams),
      bundles: cases((bundle) => bundle.caseGrams),
    });
  if (limits.millilitres !== null)
    rows.push({
      id: 'volume',
      limit: limits.millilitres,
      carried: weighed((piece) => piece.millilitres),
      bundles: cases((bundle) => bundle.caseMillilitres),
    });
  rows.push({
    id: 'money',
    limit: limits.cents,
    carried: [],
    bought: scene.pieces.flatMap(({ owned, cents }, piece) =>
      owned || cents === null || cents === 0 ? [] : [{ piece, weight: cents }],
    ),
    bundles: bundles.flatMap(({ owned, cents }, bundle) =>
      owned || cents === 0 ? [] : [{ bundle, weight: cents }],
    ),
  });
  for (const { id, grams, kit } of limits.berths) {
    const here = (berth: string | null) => berth === id || (berth === null && kit === true);
    rows.push({
      id: `berth ${id}`,
      limit: grams,
      carried: weighed((piece) => (here(piece.berth) ? piece.grams : 0)),
      bundles: cases((bundle) => (here(null) ? bundle.caseGrams : 0)),
    });
  }
  for (const { id, grams, factor, elsewhere } of limits.loads) {
    const at = (berth: string | null) => (berth === null ? elsewhere : (factor[berth] ?? elsewhere));
    rows.push({
      id: `load ${id}`,
      limit: grams,
      carried: weighed((piece) => wholeGrams(piece.grams, at(piece.berth))),
      bundles: cases((bundle) => wholeGrams(bundle.caseGrams, elsewhere)),
    });
  }
  return rows;
}

/** Factors count in whole billionths: a tape measure gives thousandths. */
const BILLION = 1_000_000_000n;

/**
 * What so many grams add to a row, rounded up to whole grams in whole-number arithmetic, so that a sum of these is never below
 * the exact sum. A negative share (ahead of, or behind, both axles) is rounded up as well, towards nothing.
 */
function wholeGrams(grams: number, factor: number): number {
  const exact = BigInt(grams) * BigInt(Math.round(factor * Number(BILLION)));
  // BigInt division cuts towards nothing: up for what is negative, down for what is not.
  return Number(exact / BILLION) + (exact % BILLION > 0n ? 1 : 0);
}
