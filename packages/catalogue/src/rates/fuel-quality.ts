import { estimate } from '../shape/basis.ts';
import type { AddedEvents } from './shape.ts';

/** Each fill from a drum, a can or a slow pump: dirt or water in the filter. */
export const FUEL_QUALITY: AddedEvents = {
  id: 'fuel-quality',
  title: 'doubtful fills',
  each: 0.02,
  counts: 'fill',
  group: 'fuel-air',
  failure: 'fuel-filter-blocked',
  basis: estimate('0.01 to 0.03 a fill; one journey log had two stops from dirty fuel'),
};
