import type { Basis } from '../shape/basis.ts';
import { source } from '../shape/basis.ts';
import type { GroupId } from '../shape/words.ts';
import { AGEING } from './groups.ts';

export interface AgeFactor {
  readonly id: string;
  readonly title: string;
  readonly groups: readonly GroupId[];
  readonly perYear: number;
  /** Age the base rates stand for, years. */
  readonly referenceYears: number;
  readonly least: number;
  readonly greatest: number;
  readonly basis: Basis;
}

/** 1 + perYear x (age - reference), kept between `least` and `greatest`. */
export const VEHICLE_AGE: AgeFactor = {
  id: 'vehicle-age',
  title: 'age',
  groups: AGEING,
  perYear: 0.05,
  referenceYears: 10,
  least: 0.5,
  greatest: 1.5,
  basis: source(
    'RAND MR-1789: failures of army vehicles rise 3 to 7 % a year of age; 5 % and the limits are ours',
  ),
};
