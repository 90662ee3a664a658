import type { Fitting, Garage } from '@waymend/garage/record/schema';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { fittingId, putFitting } from '../edits.ts';

/** What the owner says of a place; what is left out stays as it is. */
export interface Said {
  readonly drive?: FittingRow['drive'];
  readonly size?: string;
  readonly torqueNm?: number;
  readonly access?: FittingRow['access'];
  readonly counterHold?: Fitting['counterHold'];
  readonly status?: Fitting['status'];
  readonly by?: string;
  readonly on?: string;
  readonly note?: string;
  readonly confirmed?: boolean;
}

/** Records what was said of a place; the first word on an assumed place makes a fitting of it. */
export function recordFitting(garage: Garage, vehicle: string, row: FittingRow, said: Said): Garage {
  const before = row.fitting === null ? undefined : garage.fittings[row.fitting];
  const id = row.fitting ?? fittingId(garage, vehicle, row.place, row.position);
  const start: Fitting = before ?? {
    vehicle,
    place: row.place,
    ...(row.position === null ? {} : { position: row.position }),
    // What the pattern assumed is kept, so that one measured size does not throw away the rest.
    drive: row.drive,
    size: row.size,
    torqueNm: row.torqueNm,
    access: row.access,
    ...(row.hold === null
      ? {}
      : { counterHold: row.hold.size === row.size ? true : { drive: row.hold.drive, size: row.hold.size } }),
    status: 'assumed',
    confirmed: false,
  };
  return putFitting(garage, id, { ...start, ...said });
}
