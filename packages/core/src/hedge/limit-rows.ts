import type { LimitRow } from '../choosing/problem.ts';
import type { Scene } from '../repairing/scene.ts';

/** Loads are weighed to the gram and shares of axles to a millionth: whole numbers need both. */
const MILLIONTHS = 1_000_000;

/** Mass, volume, money, berths, axles, gross, roof: whole-number rows of the choosing problem (M6, M13). */
export function limitRows(scene: Scene): readonly LimitRow[] {
  const { limits, pieces, bundles } = scene;
  const whole = bundles.flatMap((b, bundle) => (b.carry === 'whole' ? [{ b, bundle }] : []));
  const rows: LimitRow[] = [];
  if (limits.grams !== null) {
    rows.push({
      id: 'mass',
      limit: limits.grams,
      carried: pieces.map((p, piece) => ({ piece, weight: p.grams })),
      bundles: whole.map(({ b, bundle }) => ({ bundle, weight: b.caseGrams })),
    });
  }
  if (limits.millilitres !== null) {
    rows.push({
      id: 'volume',
      limit: limits.millilitres,
      carried: pieces.map((p, piece) => ({ piece, weight: p.millilitres })),
      bundles: whole.map(({ b, bundle }) => ({ bundle, weight: b.caseMillilitres })),
    });
  }
  rows.push({
    id: 'money',
    limit: limits.cents,
    carried: [],
    bought: pieces.flatMap((p, piece) => (p.owned || p.cents === null ? [] : [{ piece, weight: p.cents }])),
    bundles: bundles.flatMap((b, bundle) => (b.owned ? [] : [{ bundle, weight: b.cents }])),
  });
  for (const { id, grams } of limits.berths) {
    const here = pieces.flatMap((p, piece) => (p.berth === id ? [{ piece, weight: p.grams }] : []));
    if (here.length > 0) rows.push({ id: `berth ${id}`, limit: grams, carried: here });
  }
  for (const { id, grams, factor, elsewhere } of limits.loads) {
    const weigh = (g: number, berth: string | null) =>
      Math.round(g * (berth === null ? elsewhere : (factor[berth] ?? elsewhere)) * MILLIONTHS);
    rows.push({
      id: `load ${id}`,
      limit: grams * MILLIONTHS,
      carried: pieces.map((p, piece) => ({ piece, weight: weigh(p.grams, p.berth) })),
      bundles: whole.map(({ b, bundle }) => ({ bundle, weight: weigh(b.caseGrams, null) })),
    });
  }
  return rows;
}
