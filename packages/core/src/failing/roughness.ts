import type { FactorTables } from './rate-tables.ts';

/**
 * Wear multiplier at a roughness, read between the printed points on straight lines and held at the ends, because nobody
 * has measured beyond them.
 *
 * @param iri International roughness index, m/km.
 */
export function roughnessFactor(points: FactorTables['roughness']['points'], iri: number): number {
  const sorted = [...points].sort((a, b) => a.iri - b.iri);
  const [first] = sorted;
  if (first === undefined) return 1;
  let below = first;
  for (const point of sorted) {
    if (point.iri >= iri) {
      if (point.iri === below.iri) return point.factor;
      const t = (iri - below.iri) / (point.iri - below.iri);
      return below.factor + t * (point.factor - below.factor);
    }
    below = point;
  }
  return below.factor;
}
