import { KIT_CARE } from './kit.ts';
import { POWER_AND_ELECTRICS } from './power-and-electrics.ts';
import type { CareRule } from './rule.ts';
import { SPARE_PART_CARE } from './spare-parts.ts';
import { SUPPLY_CARE } from './supplies.ts';
import { TOOL_CARE } from './tools.ts';

/** Every care rule. Defaults: the owner may change each. */
export const CARE_RULES: readonly CareRule[] = [
  ...POWER_AND_ELECTRICS,
  ...TOOL_CARE,
  ...SUPPLY_CARE,
  ...SPARE_PART_CARE,
  ...KIT_CARE,
];

export const CARE_RULE_BY_ID: ReadonlyMap<string, CareRule> = new Map(
  CARE_RULES.map((rule) => [rule.id, rule]),
);
