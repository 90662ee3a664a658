import { basisText } from './basis-text.ts';
import { conditionHolds } from './condition.ts';
import { celsius, legFactors } from './leg-factors.ts';
import { legSpread } from './leg-spread.ts';
import type { RateInput, RateLeg } from './rate-input.ts';
import type { RatePart } from './rate-result.ts';
import type { AddedEvents } from './rate-tables.ts';
import { batteryAgeFactors, modificationFactors, vehicleFactors } from './vehicle-factors.ts';

/** Tables print events per 10,000 km. */
const METRES_PER_RATE = 1e7;

/** A part of a whole group's events, before it is shared out; `only` when it falls on one failure. */
export interface GroupPart extends Omit<RatePart, 'share' | 'events'> {
  readonly only?: string;
}

/** Everything that brings events to a group, leg by leg, before its failures share it (M1). */
export function groupParts(input: RateInput, group: string): readonly GroupPart[] {
  return [
    ...distanceParts(input, group),
    ...input.tables.factors.added.flatMap((rule) => (rule.group === group ? addedParts(input, rule) : [])),
    ...crossingParts(input, group),
  ];
}

function distanceParts(input: RateInput, group: string): readonly GroupPart[] {
  const rates = input.tables.groups.find((g) => g.id === group);
  if (rates === undefined) return [];
  const always = vehicleFactors(input, group);
  return input.legs.flatMap((leg) => {
    if (!(leg.distance > 0)) return [];
    const factors = [
      ...always,
      ...modificationFactors(input, group, leg.surface),
      ...legFactors(input, group, leg),
    ];
    return [
      {
        kind: 'distance' as const,
        leg: leg.id,
        title: rates.title,
        base: (leg.distance / METRES_PER_RATE) * rates.per10000km[leg.surface],
        // What leaves the rate alone is not worth showing.
        factors: factors.filter((f) => f.factor !== 1),
        basis: basisText(rates.basis),
      },
    ];
  });
}

/** Events that are counted rather than driven: fills, dust, days, nights. Only the age of a battery touches them. */
function addedParts(input: RateInput, rule: AddedEvents): readonly GroupPart[] {
  if (!conditionHolds(rule.when, input.vehicle.features)) return [];
  const timely = rule.counts === 'day' || rule.counts === 'camp night';
  const part = (leg: string | null, count: number): readonly GroupPart[] =>
    count > 0
      ? [
          {
            kind: rule.counts,
            leg,
            title: rule.title,
            base: rule.each * count,
            factors: timely ? batteryAgeFactors(input, rule.group).filter((f) => f.factor !== 1) : [],
            basis: basisText(rule.basis),
            ...(rule.failure === undefined ? {} : { only: rule.failure }),
          },
        ]
      : [];
  const perLeg = (count: (leg: RateLeg) => number) => input.legs.flatMap((leg) => part(leg.id, count(leg)));
  switch (rule.counts) {
    case 'day':
      return part(null, input.trip.days);
    case 'camp night':
      return part(null, input.trip.campNights);
    case 'fill':
      return perLeg((leg) => leg.doubtfulFills);
    case '10,000 km of dusty leg':
      return perLeg((leg) => (leg.dusty ? leg.distance / METRES_PER_RATE : 0));
    case 'cold night':
      return perLeg((leg) => (isCold(input, leg) ? input.trip.campNights * legSpread(input.legs, leg) : 0));
  }
}

/** A leg counts as cold from the warmest step of the cold table that does anything. */
function isCold(input: RateInput, leg: RateLeg): boolean {
  const coldest = celsius(leg.coldest);
  const step = input.tables.factors.cold.steps.find((s) => coldest !== undefined && s.upTo >= coldest);
  return step !== undefined && Object.keys(step.by).length > 0;
}

function crossingParts(input: RateInput, group: string): readonly GroupPart[] {
  const rule = input.tables.factors.crossings;
  const share = rule.split[group] ?? 0;
  return input.legs.flatMap((leg) => {
    const count = (depth: keyof typeof rule.each) => (leg.crossings[depth] ?? 0) * rule.each[depth];
    const events = count('belowHub') + count('hubToSill') + count('sillToBonnet') + count('aboveIntake');
    if (!(share * events > 0)) return [];
    const basis = basisText(rule.basis);
    return [
      { kind: 'crossing' as const, leg: leg.id, title: rule.title, base: share * events, factors: [], basis },
    ];
  });
}
