import { conditionHolds } from './condition.ts';
import type { FailureShare } from './rate-tables.ts';

/**
 * Each failure's share of its group on a vehicle with these features: weight over the sum of the weights that apply, so
 * that what the vehicle cannot break leaves the group's rate alone (M1). A weight of 0 shares nothing of it and still may
 * have events of its own added. Failures that do not apply are missing; a group
 * of which none applies has no events.
 */
export function sharesOf(
  failures: readonly FailureShare[],
  features: ReadonlySet<string>,
): ReadonlyMap<string, number> {
  const apply = failures.filter((f) => f.share >= 0 && conditionHolds(f.when, features));
  const sums = new Map<string, number>();
  for (const f of apply) sums.set(f.group, (sums.get(f.group) ?? 0) + f.share);
  const shareOf = (f: FailureShare) => (f.share > 0 ? f.share / (sums.get(f.group) ?? f.share) : 0);
  return new Map(apply.map((f) => [f.id, shareOf(f)]));
}
