import { estimate } from '../shape/basis.ts';
import type { AddedEvents, FlagFactor } from './shape.ts';

/** Dust grinds brushes and slip rings. */
export const DUST: FlagFactor = {
  id: 'dust',
  title: 'dust',
  by: { 'charging-starting': 1.5 },
  basis: estimate('common practice that dust shortens the life of brushes; the factor is ours'),
};

/** Driving in other people's dust chokes the air filter: one in 20,000 km of it, as 0.05 a 1,000 km. */
export const DUST_FILTER: AddedEvents = {
  id: 'dust-filter',
  title: 'air filter choked by dust',
  each: 0.5,
  counts: '10,000 km of dusty leg',
  group: 'fuel-air',
  failure: 'air-filter-choked',
  basis: estimate('0.05 a 1,000 km in convoy'),
};
