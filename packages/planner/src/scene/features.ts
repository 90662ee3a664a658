import type { Condition, Feature } from '@waymend/catalogue/shape/words';

/** Whether a vehicle with these features meets the condition; no condition always holds. */
export function holds(condition: Condition | undefined, features: ReadonlySet<Feature>): boolean {
  if (condition === undefined) return true;
  const all = condition.all?.every((f) => features.has(f)) ?? true;
  const any =
    condition.any === undefined || condition.any.length === 0 || condition.any.some((f) => features.has(f));
  const none = !(condition.none?.some((f) => features.has(f)) ?? false);
  return all && any && none;
}
