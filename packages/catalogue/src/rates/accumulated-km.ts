import { recalled } from '../shape/basis.ts';
import { AGEING } from './groups.ts';
import type { DistanceFactor } from './shape.ts';

/**
 * Twice the distance run is 1.24 times the trouble. The base rates stand for ten years at 15,000 km; the limits keep a new
 * vehicle from having a rate of nought and an old one from being counted down twice, by years and by distance.
 */
export const ACCUMULATED_KM: DistanceFactor = {
  groups: AGEING,
  exponent: 0.308,
  referenceKm: 150_000,
  least: 0.5,
  most: 1.5,
  basis: recalled(
    'World Bank HDM-III, parts consumption of light vehicles; reference and limits are estimates',
  ),
};
