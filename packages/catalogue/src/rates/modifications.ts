import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { GroupId, Surface } from '../shape/words.ts';
import type { FlagFactor } from './shape.ts';

export interface AddedCircuits {
  readonly id: string;
  readonly title: string;
  readonly group: GroupId;
  /** Events per 10,000 km for each circuit that was not there when the vehicle was built. */
  readonly eachPer10000km: Readonly<Record<Surface, number>>;
  readonly basis: Basis;
}

/** Owner-fitted wiring is the least protected. Other surfaces as the wiring group's own rates go. */
export const ADDED_CIRCUITS: AddedCircuits = {
  id: 'added-circuits',
  title: 'circuits added',
  group: 'wiring',
  eachPer10000km: { sealed: 0.0012, gravel: 0.0024, corrugated: 0.01, rock: 0.008, sand: 0.0024 },
  basis: estimate(
    '0.01 on corrugations by common practice; other surfaces in proportion to the wiring rates',
  ),
};

/** Raised by more than this, mm, the joints of the shafts work at an angle. */
export const LIFT_ABOVE_MM = 50;

export const LIFT_KIT: FlagFactor = {
  id: 'lift-kit',
  title: 'lift of more than 50 mm',
  by: { driveline: 1.25 },
  onPart: { part: 'universal and drive shaft joints', factor: 1.5, shareOfGroup: 1 / 2 },
  basis: estimate('1.5 times on joints by common practice; taken as half of driveline trouble'),
};

/** Tyres larger in diameter than the maker's by more than this, %. */
export const TYRES_ABOVE_PCT = 10;

export const LARGE_TYRES: FlagFactor = {
  id: 'large-tyres',
  title: 'tyres more than 10 % over size',
  by: { steering: 1.5, driveline: 1.5 },
  basis: estimate('common practice; longer lever on every joint, more mass to turn'),
};

/** On rock only: both wheels drive, and one shaft can get the torque of two. */
export const LOCKERS_ON_ROCK: FlagFactor = {
  id: 'lockers-on-rock',
  title: 'locked axles on rock',
  when: { all: ['lockers'] },
  by: { driveline: 1.5 },
  onPart: { part: 'shafts', factor: 2, shareOfGroup: 1 / 2 },
  basis: estimate('2 times on shafts by common practice; taken as half of driveline trouble'),
};

/** When the roof carries more than its rating. */
export const ROOF_OVERLOAD: FlagFactor = {
  id: 'roof-overload',
  title: 'roof loaded over its rating',
  by: { body: 5 / 3 },
  onPart: { part: 'roof racks and their feet', factor: 3, shareOfGroup: 1 / 3 },
  basis: estimate('3 times on racks by common practice; taken as a third of body trouble'),
};
