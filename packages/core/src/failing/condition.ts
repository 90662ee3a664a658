import type { FeatureCondition } from './rate-tables.ts';

/** Whether a vehicle with these features meets the condition; no condition always holds. */
export function conditionHolds(
  condition: FeatureCondition | undefined,
  features: ReadonlySet<string>,
): boolean {
  if (condition === undefined) return true;
  const { all = [], any = [], none = [] } = condition;
  return (
    all.every((f) => features.has(f)) &&
    (any.length === 0 || any.some((f) => features.has(f))) &&
    !none.some((f) => features.has(f))
  );
}
