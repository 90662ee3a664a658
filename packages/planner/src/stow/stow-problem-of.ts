import { loadOf } from '@waymend/core/loading/load';
import type { Solver } from '@waymend/core/choosing/solver-port';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { inMillimetres, wholeMillimetres } from '@waymend/core/quantity/units';
import type { StowLoadRow, StowProblem } from '@waymend/core/stowing/stow-problem';
import type { BuiltScene } from '../scene/build-scene.ts';
import { loadInput } from '../scene/load.ts';
import type { Trade } from '../trade.ts';
import { NO_BERTH, proposedBags, stowBags, stowBerths } from './stow-bags.ts';
import type { KitToStow } from './stow-pieces.ts';
import { stowPieces } from './stow-pieces.ts';

/** The stowing problem of one kit on its trip; `proposed` when the garage has no bags and typical ones stand in for them. */
export interface StowAsked {
  readonly problem: StowProblem;
  readonly proposed: boolean;
}

export function stowProblemOf(
  built: BuiltScene,
  kit: KitToStow,
  trade: Trade,
  solver: Solver,
): Result<StowAsked> {
  const fault = faultOf(built);
  if (fault !== null) return fault;
  const { garage, trip, vehicle, scene } = built;
  const input = loadInput(garage, trip, vehicle, [], trade.loadIndex);
  const bare = loadOf(input);
  if (!bare.ok) return bare;
  const berths = stowBerths(built, input, bare.value);
  const pieces = stowPieces(built, kit, trade);
  const own = stowBags(built);
  const loads = scene.limits.loads.map(
    ({ id, grams, factor, elsewhere }): StowLoadRow => ({
      id,
      grams,
      factor: { ...factor, [NO_BERTH]: elsewhere },
    }),
  );
  return ok({
    problem: {
      pieces,
      bags: own.length > 0 ? own : proposedBags(pieces, berths, solver),
      berths,
      rearAxle: wholeMillimetres(Math.round(inMillimetres(input.wheelbase))),
      loads,
    },
    proposed: own.length === 0,
  });
}

/** A pocket that is in another bag than its contents; a record that came past the file's own checks with sizes no bag has. */
function faultOf({ garage }: BuiltScene): Result<never> | null {
  const tables: Readonly<Record<string, Readonly<Record<string, { readonly name: string }>>>> = {
    bags: garage.bags,
    pockets: garage.pockets,
  };
  for (const [table, records] of Object.entries(tables))
    for (const [id, record] of Object.entries(records)) {
      const fields = new Map<string, unknown>(Object.entries(record));
      for (const [key, value] of fields)
        if (key !== 'order' && typeof value === 'number' && value < 0)
          return refuse(
            'size-negative',
            `${key} of ${record.name} is ${value}; it cannot be negative, remove the minus`,
            { path: `${table}.${id}.${key}` },
          );
    }
  for (const [id, { bag, pocket }] of Object.entries(garage.belongings)) {
    const other = pocket === undefined ? undefined : garage.pockets[pocket]?.bag;
    if (bag !== undefined && other !== undefined && other !== bag)
      return refuse(
        'pocket-in-other-bag',
        `${id} is said to be in the bag "${bag}" and in a pocket of the bag "${other}"; take one of the two out`,
        { path: `belongings.${id}.pocket` },
      );
  }
  return null;
}
