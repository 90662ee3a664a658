import { recalled } from '../shape/basis.ts';
import { SHAKEN } from './groups.ts';
import type { RoughnessFactor } from './shape.ts';

/** Rise with IRI (m/km), World Bank HDM-III: 0.0137 per count of the older QI scale, about 13 counts to 1 m/km. */
const SLOPE = 0.0137 * 13;
/** IRI at which the curve is 1: an ordinary sealed road. */
const REFERENCE = 3;
/** From 120 counts on the curve runs straight, as its tangent. */
const STRAIGHT_FROM = 120 / 13;
const ROUGHEST = 24;

function partsUse(iri: number): number {
  const curved = Math.exp(SLOPE * (Math.min(iri, STRAIGHT_FROM) - REFERENCE));
  return curved * (1 + SLOPE * Math.max(0, iri - STRAIGHT_FROM));
}

/** Every half m/km from dead smooth to the roughest road that is still one. */
const POINTS = Array.from({ length: ROUGHEST * 2 + 1 }, (_, i) => ({ iri: i / 2, factor: partsUse(i / 2) }));

/**
 * Shaking. A leg that states its IRI counts only against the IRI its surface stands for, since the surface's base rate has
 * that in it already. What the surfaces stand for lies within the bands of the World Bank's roughness scale (Technical
 * Paper 46, recalled): sealed roads 1.5 to 6, kept gravel 3.5 to 10, rough tracks 8 to 20.
 */
export const ROUGHNESS: RoughnessFactor = {
  groups: SHAKEN,
  points: POINTS,
  surfaceIri: { sealed: 3, gravel: 7, corrugated: 11, rock: 12, sand: 6 },
  basis: recalled('World Bank HDM-III, parts consumption of light vehicles'),
};
