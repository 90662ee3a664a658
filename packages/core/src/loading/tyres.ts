import type { Result } from '../result.ts';
import { ok, refuse } from '../result.ts';
import type { LoadIndexRow } from './load-input.ts';

/** A passenger tyre on a truck, multipurpose vehicle or trailer counts for its rating / 1.10 (49 CFR 571.120, S5.1.2). */
export const PASSENGER_TYRE_DIVISOR = 1.1;
const TYRES_PER_AXLE = 2;

/** What the two tyres of an axle carry, kg. Refuses a load index that the table does not have. */
export function axleTyresKg(
  tyre: { readonly loadIndex: number; readonly passenger: boolean },
  table: readonly LoadIndexRow[],
): Result<number> {
  const row = table.find((r) => r.index === tyre.loadIndex);
  if (row === undefined) {
    return refuse(
      'load-index-unknown',
      `Load index ${tyre.loadIndex} is not in the table; read it off the sidewall, it is the number before the speed letter`,
      { path: 'tyre.loadIndex' },
    );
  }
  return ok((TYRES_PER_AXLE * row.kg) / (tyre.passenger ? PASSENGER_TYRE_DIVISOR : 1));
}
