import type { RateLeg } from './rate-input.ts';

/** The part of the trip's time that a leg takes, taken as its part of the distance (estimate); evenly on no distance. */
export function legSpread(legs: readonly RateLeg[], leg: RateLeg): number {
  const total = legs.reduce((sum, l) => sum + l.distance, 0);
  return total > 0 ? leg.distance / total : 1 / legs.length;
}
