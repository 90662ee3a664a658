import type { Result } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { recordBreakdown } from '@waymend/garage/road/notes';
import { recordRepair } from '@waymend/garage/road/repairs';
import type { RepairWay } from '@waymend/planner/card/repair-ways';

export type Ended = Garage['breakdowns'][string]['ended'];

export interface Done {
  readonly repair: string;
  readonly breakdown: string;
  readonly vehicle: string;
  readonly trip: string;
  /** As the catalogue calls it. */
  readonly job: string;
  readonly way: RepairWay;
  /** What failed; null: nothing to learn from. */
  readonly failure: string | null;
  readonly ended: Ended;
  readonly on: string;
  readonly atKm: number;
  readonly note: string;
}

/** The repair with its limits, and the failure it answered, as one change (M1 learns from the second). */
export function recordDone(garage: Garage, done: Done): Result<Garage> {
  const { repair, breakdown, vehicle, trip, job, way, failure, ended, on, atKm } = done;
  const note = done.note.trim();
  const mended = recordRepair(
    garage,
    {
      id: repair,
      vehicle,
      job,
      ...(way.expedient === null ? {} : { expedient: way.expedient }),
      ...(failure === null ? {} : { failure }),
      on,
      atKm,
      ...(note === '' ? {} : { note }),
    },
    way.limits,
  );
  if (!mended.ok || failure === null) return mended;
  return recordBreakdown(mended.value, { id: breakdown, vehicle, failure, on, atKm, ended, repair, trip });
}

/** How it ended, unless somebody says otherwise. */
export function usualEnd(lasts: RepairWay['limits']['lasts']): Ended {
  return lasts === 'permanent' ? 'mended' : lasts === 'temporary' ? 'limped' : 'towed';
}
