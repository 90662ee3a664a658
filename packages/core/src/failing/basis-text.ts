import { unreachable } from '../result.ts';
import type { RateBasis } from './rate-tables.ts';

/** The basis of a figure in words, as it stands beside the figure. */
export function basisText(basis: RateBasis): string {
  switch (basis.kind) {
    case 'source':
      return basis.cite;
    case 'computed':
      return `computed from ${basis.from}`;
    case 'common-practice':
      return 'common practice';
    case 'estimate':
      return `estimate: ${basis.why}`;
    case 'recalled':
      return `recalled, not re-read: ${basis.of}`;
    default:
      return unreachable(basis);
  }
}
