import { basisText } from './basis-text.ts';
import { conditionHolds } from './condition.ts';
import { ICE_POINT, legFactors } from './leg-factors.ts';
import type { RateInput, RateLeg } from './rate-input.ts';
import type { RatePart } from './rate-result.ts';
import type { CrossingDepth } from './rate-tables.ts';
import { sum } from './sum.ts';
import { modificationFactors, vehicleFactors } from './vehicle-factors.ts';

/** Tables print events per 10,000 km. */
const METRES_PER_RATE = 1e7;
const METRES_PER_DUST = 1e6;
const DAYS_PER_YEAR = 365;

/** A part of a whole group's events, before it is shared out; `only` when it falls on one failure. */
export interface GroupPart extends Omit<RatePart, 'share' | 'events'> {
  readonly only?: string;
}

/** Everything that brings events to a group, leg by leg, before its failures share it (M1). */
export function groupParts(input: RateInput, group: string): readonly GroupPart[] {
  return [...distanceParts(input, group), ...addedParts(input, group)];
}

function distanceParts(input: RateInput, group: string): readonly GroupPart[] {
  const rates = input.tables.groups.find((g) => g.id === group);
  if (rates === undefined) return [];
  const always = vehicleFactors(input, group);
  return input.legs.flatMap((leg) =>
    leg.distance > 0
      ? [
          {
            kind: 'distance' as const,
            leg: leg.id,
            base: (leg.distance / METRES_PER_RATE) * rates.per10000km[leg.surface],
            factors: [
              ...always,
              ...modificationFactors(input, group, leg.surface),
              ...legFactors(input, group, leg),
            ],
            basis: basisText(rates.basis),
          },
        ]
      : [],
  );
}

/** What does not grow with base rate and distance: dust, fills, crossings, frost, days. No factors apply (M1). */
function addedParts(input: RateInput, group: string): readonly GroupPart[] {
  const { dustEvents, fillEvents, crossing, perDay } = input.tables.factors;
  const out: GroupPart[] = [];
  for (const leg of input.legs) {
    const here = { leg: leg.id, factors: [] };
    if (dustEvents.group === group && leg.dusty && leg.distance > 0) {
      const base = (leg.distance / METRES_PER_DUST) * dustEvents.per1000km;
      out.push({
        kind: 'dust',
        ...here,
        base,
        basis: basisText(dustEvents.basis),
        ...target(dustEvents.failure),
      });
    }
    if (fillEvents.group === group && leg.doubtfulFills > 0) {
      const base = leg.doubtfulFills * fillEvents.perFill;
      out.push({
        kind: 'fills',
        ...here,
        base,
        basis: basisText(fillEvents.basis),
        ...target(fillEvents.failure),
      });
    }
    const split = crossing.split.find((s) => s.group === group)?.share ?? 0;
    const base = split * crossingEvents(leg, crossing.events);
    if (base > 0) out.push({ kind: 'crossings', ...here, base, basis: basisText(crossing.basis) });
  }
  out.push(...frostParts(input, group));
  if (perDay.group === group) {
    const nights = conditionHolds(perDay.campNightWhen, input.vehicle.features) ? input.trip.campNights : 0;
    const base = (input.trip.days / DAYS_PER_YEAR) * perDay.perYear + nights * perDay.perCampNight;
    if (base > 0) out.push({ kind: 'days', leg: null, base, factors: [], basis: basisText(perDay.basis) });
  }
  return out;
}

/** Nights of frost without winter fuel; the trip's nights are spread over its legs by distance. */
function frostParts(input: RateInput, group: string): readonly GroupPart[] {
  const { waxing } = input.tables.factors;
  if (waxing?.group !== group || !conditionHolds(waxing.when, input.vehicle.features)) return [];
  const nights = Math.max(input.trip.campNights, input.trip.days - 1, 0);
  const total = sum(input.legs, (leg) => leg.distance);
  return input.legs.flatMap((leg) => {
    const frost = leg.coldest !== undefined && leg.coldest < waxing.below + ICE_POINT;
    if (!frost || leg.winterFuel === true || nights === 0) return [];
    const here = total > 0 ? leg.distance / total : 1 / input.legs.length;
    const base = nights * here * waxing.perNight;
    return base > 0
      ? [
          {
            kind: 'frost' as const,
            leg: leg.id,
            factors: [],
            base,
            basis: basisText(waxing.basis),
            only: waxing.failure,
          },
        ]
      : [];
  });
}

function target(failure: string | undefined): { only?: string } {
  return failure === undefined ? {} : { only: failure };
}

function crossingEvents(leg: RateLeg, events: Readonly<Record<CrossingDepth, number>>): number {
  const count = (depth: CrossingDepth) => (leg.crossings[depth] ?? 0) * events[depth];
  return count('belowHub') + count('hubToSill') + count('sillToBonnet') + count('aboveIntake');
}
