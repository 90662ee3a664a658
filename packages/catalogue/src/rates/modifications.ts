import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { GroupId, Surface } from '../shape/words.ts';
import type { ModificationFactor } from './shape.ts';
import { spread } from './shape.ts';

export interface AddedCircuits {
  readonly group: GroupId;
  /** Events per 10,000 km at `surface` for each circuit added; elsewhere in proportion to the group's own rate. */
  readonly per10000km: number;
  readonly surface: Surface;
  readonly basis: Basis;
}

/** Owner-fitted wiring is the least protected on the vehicle. */
export const ADDED_CIRCUITS: AddedCircuits = {
  group: 'wiring',
  per10000km: 0.01,
  surface: 'corrugated',
  basis: estimate('common practice; depends on who fitted it'),
};

export const MODIFICATIONS: readonly ModificationFactor[] = [
  {
    id: 'lift-kit',
    title: 'Raised by more than 50 mm',
    groups: ['driveline'],
    liftMoreThanMm: 50,
    factor: spread(1.5, 1 / 2),
    basis: estimate('1.5 times on joints that work at an angle; taken as half of driveline trouble'),
  },
  {
    id: 'large-tyres',
    title: 'Tyres more than 10 % over size',
    groups: ['steering', 'driveline'],
    oversizeMoreThanPct: 10,
    factor: 1.5,
    basis: estimate('common practice; a longer lever on every joint and more mass to turn'),
  },
  {
    id: 'lockers-on-rock',
    title: 'Locked axles on rock',
    groups: ['driveline'],
    when: { all: ['lockers'] },
    surface: 'rock',
    factor: spread(2, 1 / 2),
    basis: estimate(
      '2 times on shafts, since one can get the torque of two; taken as half of driveline trouble',
    ),
  },
  {
    id: 'roof-overload',
    title: 'Roof loaded over its rating',
    groups: ['body'],
    roofOverloaded: true,
    factor: spread(3, 1 / 3),
    basis: estimate('3 times on racks and their feet; taken as a third of body trouble'),
  },
];
