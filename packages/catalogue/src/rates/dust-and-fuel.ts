import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { GroupId } from '../shape/words.ts';
import type { FlatFactor } from './shape.ts';

/** Dust grinds brushes and slip rings. */
export const DUST: readonly FlatFactor[] = [
  {
    groups: ['charging-starting'],
    factor: 1.5,
    basis: estimate('common practice that dust shortens the life of brushes; the factor is ours'),
  },
];

interface FilterEvents {
  readonly group: GroupId;
  /** The one failure of the group that grows. */
  readonly failure: string;
  readonly basis: Basis;
}

/** Driving in other people's dust chokes the air filter. */
export const DUST_EVENTS: FilterEvents & { readonly per1000km: number } = {
  group: 'fuel-air',
  failure: 'air-filter-choked',
  per1000km: 0.05,
  basis: estimate('one choked filter in 20,000 km behind other vehicles'),
};

/** Each fill from a drum, a can or a slow pump: dirt or water in the filter. */
export const FILL_EVENTS: FilterEvents & { readonly perFill: number } = {
  group: 'fuel-air',
  failure: 'fuel-filter-blocked',
  perFill: 0.02,
  basis: estimate('0.01 to 0.03 a fill; one journey log had two stops from dirty fuel'),
};
