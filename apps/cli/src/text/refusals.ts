import type { Refusal } from '@waymend/core/result';
import { paragraph } from './layout.ts';

/** Refusals as sentences, most useful first, each saying where and what to do. */
export function refusalLines(refusals: readonly Refusal[]): string[] {
  return refusals.flatMap((r) => {
    const end = /[.!?]$/.test(r.message) ? '' : '.';
    return paragraph(`${r.message}${end}`, 0, 2);
  });
}
