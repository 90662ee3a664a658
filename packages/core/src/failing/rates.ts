import { factorOf, productOf } from './factor.ts';
import type { GroupPart } from './group-parts.ts';
import { groupParts } from './group-parts.ts';
import { byReach } from './by-reach.ts';
import type { RateInput } from './rate-input.ts';
import type { FailureRate, GroupTotal, RatePart, RateResult } from './rate-result.ts';
import type { FailureShare } from './rate-tables.ts';
import { sharesOf } from './shares.ts';
import { sum } from './sum.ts';

/**
 * Expected failures of one vehicle on one trip (M1): for each failure the sum over legs of distance x base rate x share x
 * factors, and what time, dust, doubtful fuel and crossings add, each as an entry of its own with its basis.
 */
export function ratesOf(input: RateInput): RateResult {
  const parts = new Map(input.tables.groups.map((g) => [g.id, groupParts(input, g.id)]));
  const shares = sharesOf(input.tables.failures, input.vehicle.features);
  const failures = input.tables.failures.flatMap((failure) => {
    const share = shares.get(failure.id);
    return share === undefined
      ? []
      : [failureRate(input, failure, share, shares, parts.get(failure.group) ?? [])];
  });
  return {
    failures,
    byReach: failures.flatMap((f) => byReach(input, f)),
    groups: groupTotals(input, failures),
    events: sum(failures, (f) => f.events),
    immobilising: sum(failures, (f) => f.immobilising),
  };
}

/** Chance that at least one of so many expected independent events happens (Poisson). */
export function chanceOfAny(expected: number): number {
  return -Math.expm1(-expected);
}

function failureRate(
  input: RateInput,
  failure: FailureShare,
  share: number,
  shares: ReadonlyMap<string, number>,
  ofGroup: readonly GroupPart[],
): FailureRate {
  const group = input.tables.groups.find((g) => g.id === failure.group);
  const weak = input.vehicle.weakPoints
    .filter((w) => w.failure === failure.id)
    .map((w) =>
      factorOf('weak-point', w.note ?? 'Known weak point', w.factor, {
        kind: 'source',
        cite: "the owner's record",
      }),
    );
  const parts = ofGroup.flatMap(({ only, ...part }): readonly RatePart[] => {
    // A failure the vehicle cannot have hands its own events back to the group.
    const whole = only !== undefined && shares.has(only);
    if (whole && only !== failure.id) return [];
    if (!whole && share === 0) return [];
    const factors = part.kind === 'distance' ? [...part.factors, ...weak] : part.factors;
    const mine = whole ? 1 : share;
    return [{ ...part, share: mine, factors, events: part.base * mine * productOf(factors) }];
  });
  const events = sum(parts, (p) => p.events);
  const immobilises = failure.immobilises ?? group?.immobilises ?? 0;
  return {
    failure: failure.id,
    group: failure.group,
    title: failure.title,
    immobilises,
    restored: failure.restored ?? group?.restored ?? 0,
    parts,
    events,
    immobilising: events * immobilises,
  };
}

function groupTotals(input: RateInput, failures: readonly FailureRate[]): readonly GroupTotal[] {
  return input.tables.groups.map((g) => {
    const mine = failures.filter((f) => f.group === g.id);
    return {
      group: g.id,
      title: g.title,
      events: sum(mine, (f) => f.events),
      immobilising: sum(mine, (f) => f.immobilising),
    };
  });
}
