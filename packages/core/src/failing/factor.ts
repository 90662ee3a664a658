import { basisText } from './basis-text.ts';
import type { Factor } from './rate-result.ts';
import type { RateBasis } from './rate-tables.ts';

export function factorOf(id: string, title: string, factor: number, basis: RateBasis): Factor {
  return { id, title, factor, basis: basisText(basis), mark: basis.kind };
}

/** Whether a rule is about this group; a rule that names no groups is about all. */
export function covers(rule: { readonly groups?: readonly string[] }, group: string): boolean {
  return rule.groups === undefined || rule.groups.includes(group);
}

export function clip(n: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, n));
}

export function productOf(factors: readonly Factor[]): number {
  return factors.reduce((product, f) => product * f.factor, 1);
}
