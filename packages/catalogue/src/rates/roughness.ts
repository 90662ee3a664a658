import type { Basis } from '../shape/basis.ts';
import { recalled } from '../shape/basis.ts';
import type { GroupId, Surface } from '../shape/words.ts';
import { SHAKEN } from './groups.ts';

/** Rise of parts use with roughness, in the shape of the World Bank's highway cost model. */
export interface RoughnessFactor {
  readonly id: string;
  readonly title: string;
  readonly groups: readonly GroupId[];
  /** Per m/km of IRI. */
  readonly slope: number;
  /** IRI at which the factor is 1, m/km. */
  readonly referenceIri: number;
  /** Above this IRI the curve goes on as its tangent. */
  readonly linearAboveIri: number;
  /** What each surface's base rate already stands for, m/km: a stated IRI counts only against this. */
  readonly surfaceIri: Readonly<Record<Surface, number>>;
  readonly basis: Basis;
  readonly surfaceBasis: Basis;
}

/**
 * m(iri) = exp(slope x (iri - reference)), above `linearAboveIri` the tangent at that point. On a leg that states its IRI
 * the groups named are multiplied by m(iri) / m(surfaceIri of its surface); on other legs by 1, since the surface's base
 * rate has its roughness in it already.
 */
export const ROUGHNESS: RoughnessFactor = {
  id: 'roughness',
  title: 'roughness',
  groups: SHAKEN,
  // 0.0137 per count of the older QI scale, about 13 counts to 1 m/km; the limit of 120 counts is 9.23 m/km.
  slope: 0.0137 * 13,
  referenceIri: 3,
  linearAboveIri: 120 / 13,
  surfaceIri: { sealed: 3, gravel: 7, corrugated: 11, rock: 12, sand: 6 },
  basis: recalled('World Bank HDM-III, parts consumption of light vehicles'),
  surfaceBasis: recalled(
    'World Bank Technical Paper 46, scale of road roughness; the values are inside its bands',
  ),
};
