import { basisText } from './basis-text.ts';
import { conditionHolds } from './condition.ts';
import type { Factor } from './rate-result.ts';
import type { FeatureCondition, FlagFactor, GroupFactors, RateBasis, StepFactor } from './rate-tables.ts';

/** What a rule of the tables is called and where it comes from. */
interface Rule {
  readonly id: string;
  readonly title: string;
  readonly when?: FeatureCondition;
  readonly basis: RateBasis;
}

/** The factor as it is shown; `detail` says what was read: 'age: 14 years'. */
export function shown(rule: Rule, factor: number, detail?: string): Factor {
  return {
    id: rule.id,
    title: detail === undefined ? rule.title : `${rule.title}: ${detail}`,
    factor,
    basis: basisText(rule.basis),
    mark: rule.basis.kind,
  };
}

/** A rule's factor on a group, as a list of one, or none when it is not about this group or vehicle. */
export function fromGroup(
  rule: Rule,
  by: GroupFactors,
  group: string,
  features: ReadonlySet<string>,
  detail?: string,
): readonly Factor[] {
  const factor = by[group];
  if (factor === undefined || !conditionHolds(rule.when, features)) return [];
  return [shown(rule, factor, detail)];
}

export function fromFlag(rule: FlagFactor, group: string, features: ReadonlySet<string>): readonly Factor[] {
  const detail = rule.onPart === undefined ? undefined : `${rule.onPart.factor} on ${rule.onPart.part}`;
  return fromGroup(rule, rule.by, group, features, detail);
}

/** Nothing when there is no reading. */
export function fromSteps(
  rule: StepFactor,
  reading: number | undefined,
  group: string,
  features: ReadonlySet<string>,
  unit: string,
): readonly Factor[] {
  if (reading === undefined) return [];
  const step = rule.steps.find((s) => s.upTo >= reading);
  return step === undefined ? [] : fromGroup(rule, step.by, group, features, `${reading} ${unit}`);
}

export function productOf(factors: readonly Factor[]): number {
  return factors.reduce((product, f) => product * f.factor, 1);
}
