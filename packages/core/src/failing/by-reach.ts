import { metres } from '../quantity/units.ts';
import { legSpread } from './leg-spread.ts';
import type { RateInput } from './rate-input.ts';
import type { FailureRate, ReachRate } from './rate-result.ts';
import { REACHES, reachOf } from './reach.ts';
import { sum } from './sum.ts';

/**
 * A failure's events by distance class to help. What time brings is spread over the legs; on a trip without legs it comes
 * where the vehicle stands, beside help.
 */
export function byReach(input: RateInput, rate: FailureRate): readonly ReachRate[] {
  const timely = rate.parts.filter((p) => p.leg === null);
  const anywhere = sum(timely, (p) => p.events);
  if (input.legs.length === 0) return anywhere > 0 ? [reachRate(rate, 'beside', 0, anywhere)] : [];
  return REACHES.flatMap((reach) => {
    const legs = input.legs.filter((l) => reachOf(l.help) === reach);
    const events = sum(legs, (leg) => {
      const here = rate.parts.filter((p) => p.leg === leg.id);
      return sum(here, (p) => p.events) + anywhere * legSpread(input.legs, leg);
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
