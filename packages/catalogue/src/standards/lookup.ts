import { printed } from '../shape/define-table.ts';
import { SQUARE_DRIVES } from './square-drives.ts';
import { TYRE_LOAD_INDEX } from './tyre-load-index.ts';
import { WRENCH_OPENINGS_INCH } from './wrench-openings-inch.ts';
import { WRENCH_OPENINGS_METRIC } from './wrench-openings-metric.ts';

/** Plain look-ups in the tables, in the units they print. */

/** Greatest load of one tyre, kg (UN R54 Annex IV), or null outside the table. */
export function loadOfIndex(loadIndex: number): number | null {
  return TYRE_LOAD_INDEX.rows.find((row) => row.loadIndex === loadIndex)?.kg ?? null;
}

/** Least and greatest opening of a listed metric wrench, mm (ISO 691, recalled), or null when the size is not listed. */
export function metricOpening(nominalMm: number): { readonly min: number; readonly max: number } | null {
  const row = WRENCH_OPENINGS_METRIC.rows.find((candidate) => candidate.nominal === nominalMm);
  return row === undefined ? null : { min: row.min, max: row.max };
}

/** Least and greatest opening of an inch wrench, in (ASME B18.2.2 appendix, recalled, confirmed at one point). */
export function inchOpening(nominalIn: number): { readonly min: number; readonly max: number } {
  const limit = (name: string): number => {
    const row = WRENCH_OPENINGS_INCH.rows.find((candidate) => candidate.limit === name);
    const plus = row === undefined ? null : printed(row, 'plus');
    if (row === undefined || plus === null) throw new Error(`the opening formula has no ${name}`);
    return row.factor * nominalIn + plus;
  };
  return { min: limit('min'), max: limit('max') };
}

/** Working limit of a square drive, N m (common practice), by its marking without the unit: '1/2'. */
export function drivesTo(drive: string): number | null {
  return SQUARE_DRIVES.rows.find((row) => row.drive === drive)?.limit ?? null;
}
