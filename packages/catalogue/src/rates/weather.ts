import { COMMON_PRACTICE, estimate } from '../shape/basis.ts';
import type { ThresholdFactor } from './shape.ts';

/**
 * Hot air cools less, hot tyres carry less, and a weak battery that gets hot goes first. (A battery's life halves with
 * about every 10 degrees, but over years: one trip adds little.)
 */
export const HEAT: readonly ThresholdFactor[] = [
  { groups: ['cooling'], threshold: 35, factor: 1.5, basis: COMMON_PRACTICE },
  // Common practice gives both figures; on cooler days it gives none for soft tyres, so none is used.
  { groups: ['tyre'], threshold: 35, factor: 1.5, softTyres: 3, basis: COMMON_PRACTICE },
  { groups: ['battery'], threshold: 35, factor: 1.2, basis: estimate('a small part of the wear of years') },
];

const FROST = estimate(
  'on days of hard frost a motoring club runs about twice its ordinary number of jobs; 2 to 4 by how cold it is',
);

/** A cold battery gives less just when a cold engine asks for more. The second step comes on top of the first. */
export const COLD: readonly ThresholdFactor[] = [
  { groups: ['battery', 'charging-starting'], threshold: -10, factor: 2, basis: FROST },
  { groups: ['battery'], threshold: -20, factor: 2, basis: FROST },
  { groups: ['charging-starting'], threshold: -20, factor: 1.5, basis: FROST },
];

/** Thin air cools less, and coolant under a weak cap boils sooner. */
export const ALTITUDE: readonly ThresholdFactor[] = [
  { groups: ['cooling'], threshold: 3000, factor: 1.3, basis: COMMON_PRACTICE },
];

/** Each night below the threshold with summer diesel in the tank: wax stops the filter. */
export const WAXING = {
  group: 'fuel-air',
  failure: 'diesel-waxed',
  when: { all: ['diesel'] },
  below: -10,
  perNight: 0.05,
  basis: estimate('0.02 to 0.1 a night without winter fuel'),
} as const;
