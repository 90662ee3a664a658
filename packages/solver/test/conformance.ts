import { relaxedConformance } from './conformance/relaxed.ts';
import { repeatConformance } from './conformance/repeats.ts';
import { sessionConformance } from './conformance/sessions.ts';
import { stoppingConformance } from './conformance/stopping.ts';
import type { Suite } from './conformance/suite.ts';
import { wholeNumberConformance } from './conformance/whole-numbers.ts';

/**
 * What core relies on in any solver behind its port (core/choosing/solver-port.ts). Every optimum of a small model was worked
 * out by hand; the reasoning stands beside it.
 */
export function conformance(suite: Suite): void {
  relaxedConformance(suite);
  sessionConformance(suite);
  wholeNumberConformance(suite);
  stoppingConformance(suite);
  repeatConformance(suite);
}
