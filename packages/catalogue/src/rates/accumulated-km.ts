import type { Basis } from '../shape/basis.ts';
import { recalled } from '../shape/basis.ts';
import type { GroupId } from '../shape/words.ts';
import { AGEING } from './groups.ts';

export interface DistanceFactor {
  readonly id: string;
  readonly title: string;
  readonly groups: readonly GroupId[];
  readonly exponent: number;
  /** Ordinary use, km a year: the odometer counts against this times the age, so that age is not counted twice. */
  readonly ordinaryKmPerYear: number;
  /** Age taken when the owner has not said, years. */
  readonly assumedAgeYears: number;
  /** An odometer below this is taken as this, km: nothing gets a rate of nought for being new. */
  readonly leastKm: number;
  readonly basis: Basis;
}

/** (odometer / (ordinary km a year x age)) ^ exponent: twice the ordinary distance is 1.24 times the trouble. */
export const ACCUMULATED_KM: DistanceFactor = {
  id: 'accumulated-km',
  title: 'distance run so far',
  groups: AGEING,
  exponent: 0.308,
  ordinaryKmPerYear: 15_000,
  assumedAgeYears: 10,
  leastKm: 10_000,
  basis: recalled(
    'World Bank HDM-III, parts consumption of light vehicles; ordinary distance is an estimate',
  ),
};
