import { axleShare } from '@waymend/core/loading/axle-share';
import { millimetres } from '@waymend/core/quantity/units';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { LoadView } from './load-view.ts';

/** What two readings of a scale say of the empty vehicle. */
export interface WeighedEmpty {
  readonly emptyFrontKg: number;
  readonly emptyRearKg: number;
  /** What was aboard and has been taken off again. */
  readonly aboardKg: number;
}

/**
 * The empty axle loads from a weigh-in with some of the trip's things aboard: their moments are taken off the readings (M13).
 * `ids` are those of `Aboard`; kilograms rounded to whole ones, as scales read. Refuses readings that leave less than nothing.
 */
export function weighIn(
  view: LoadView,
  frontKg: number,
  rearKg: number,
  ids: ReadonlySet<string>,
): Result<WeighedEmpty> {
  const things = view.spots.flatMap((spot) => spot.aboard).filter(({ id }) => ids.has(id));
  let front = frontKg;
  let rear = rearKg;
  for (const { kg, xMm } of things) {
    const share = axleShare(millimetres(xMm), millimetres(view.wheelbaseMm));
    front -= kg * share.front;
    rear -= kg * share.rear;
  }
  if (!(front > 0) || !(rear > 0))
    return refuse(
      'weighed-less-than-nothing',
      'What was aboard weighs more than the scale read; look at both readings and at what is marked as aboard',
      { path: 'weigh-in' },
    );
  return ok({
    emptyFrontKg: Math.round(front),
    emptyRearKg: Math.round(rear),
    aboardKg: things.reduce((sum, t) => sum + t.kg, 0),
  });
}
