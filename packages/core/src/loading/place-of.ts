import type { Metres } from '../quantity/units.ts';
import { metres } from '../quantity/units.ts';
import type { Result } from '../result.ts';
import { ok, refuse } from '../result.ts';
import type { FixedLoad, LoadBerth, LoadInput } from './load-input.ts';
import { CARGO_SHARE_OF_WHEELBASE, HITCH_BEHIND_REAR_AXLE, PERSON_SHARE_OF_WHEELBASE } from './load-input.ts';

/** Where one thing rides: metres behind the front axle, its berth if it has one, and whether that was assumed. */
export interface Spot {
  readonly x: Metres;
  readonly berth: LoadBerth | null;
  readonly assumed: boolean;
}

/** The spot of a fixed load; refuses a berth that is not there. */
export function spotOfFixed(input: LoadInput, load: FixedLoad): Result<Spot> {
  const berth = findBerth(input, load.berth, `loads.${load.id}.berth`);
  if (!berth.ok) return berth;
  if (load.x !== undefined) return ok({ x: load.x, berth: berth.value, assumed: false });
  if (berth.value !== null) return ok({ x: berth.value.x, berth: berth.value, assumed: false });
  return ok({ x: usualPlace(input, load.kind), berth: null, assumed: true });
}

/** The spot of a piece of the kit: its own berth, else the kit's, else over the rear axle. */
export function spotOfKit(input: LoadInput, berthId: string | null, path: string): Result<Spot> {
  const berth = findBerth(input, berthId ?? input.kitBerth, path);
  if (!berth.ok) return berth;
  if (berth.value !== null) return ok({ x: berth.value.x, berth: berth.value, assumed: false });
  return ok({ x: usualPlace(input, 'cargo'), berth: null, assumed: true });
}

function usualPlace(input: LoadInput, kind: FixedLoad['kind']): Metres {
  switch (kind) {
    case 'person':
      return metres(input.wheelbase * PERSON_SHARE_OF_WHEELBASE);
    case 'cargo':
      return metres(input.wheelbase * CARGO_SHARE_OF_WHEELBASE);
    case 'trailer-nose':
      return metres(input.wheelbase + HITCH_BEHIND_REAR_AXLE);
  }
}

function findBerth(input: LoadInput, id: string | undefined, path: string): Result<LoadBerth | null> {
  if (id === undefined) return ok(null);
  const berth = input.berths.find((b) => b.id === id);
  if (berth !== undefined) return ok(berth);
  return refuse(
    'berth-unknown',
    `There is no berth "${id}" on this vehicle; add it or change the reference`,
    {
      path,
    },
  );
}
