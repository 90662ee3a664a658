import { metres } from '../quantity/units.ts';
import type { RateInput, RateLeg } from './rate-input.ts';
import type { FailureRate, ReachRate } from './rate-result.ts';
import { REACHES, reachOf } from './reach.ts';
import { sum } from './sum.ts';

/** A failure's events by distance class to help; what time brings is spread over the legs by distance. */
export function byReach(input: RateInput, rate: FailureRate): readonly ReachRate[] {
  const anywhere = sum(
    rate.parts.filter((p) => p.leg === null),
    (p) => p.events,
  );
  const total = sum(input.legs, (l) => l.distance);
  const spread = (leg: RateLeg) => (total > 0 ? leg.distance / total : 1 / input.legs.length);
  if (input.legs.length === 0) {
    return anywhere > 0 ? [reachRate(rate, 'beside', 0, anywhere)] : [];
  }
  return REACHES.flatMap((reach) => {
    const legs = input.legs.filter((l) => reachOf(l.help) === reach);
    const events = sum(legs, (leg) => {
      const here = rate.parts.filter((p) => p.leg === leg.id);
      return sum(here, (p) => p.events) + anywhere * spread(leg);
    });
    return events > 0 ? [reachRate(rate, reach, Math.max(...legs.map((l) => l.help)), events)] : [];
  });
}

function reachRate(rate: FailureRate, reach: ReachRate['reach'], help: number, events: number): ReachRate {
  return {
    failure: rate.failure,
    reach,
    help: metres(help),
    events,
    immobilising: events * rate.immobilises,
  };
}
