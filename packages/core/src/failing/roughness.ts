import type { FactorTables } from './rate-tables.ts';

/**
 * Wear multiplier at a roughness: exponential, and above the end of the measured range its tangent, as the highway cost
 * models have it. Below the reference it is held at 1, because a smoother road than that has not been shown to spare parts.
 *
 * @param iri International roughness index, m/km.
 */
export function roughnessFactor(table: FactorTables['roughness'], iri: number): number {
  const { slope, referenceIri, linearAboveIri } = table;
  const curve = (x: number) => Math.exp(slope * (x - referenceIri));
  if (iri <= referenceIri) return 1;
  if (iri <= linearAboveIri) return curve(iri);
  return curve(linearAboveIri) * (1 + slope * (iri - linearAboveIri));
}
