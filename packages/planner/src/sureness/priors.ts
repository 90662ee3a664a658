import { ownLog } from '../scene/own-log.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { GroupPrior } from './draws.ts';

/** How well each group's rate is known: the trade's prior, or what the vehicle's own log has made of it (M1). */
export function groupPriors(built: BuiltScene, trade: Trade): readonly GroupPrior[] {
  const { garage, trip, vehicle, features } = built;
  const { learned } = ownLog(garage, trip.vehicle, vehicle, features, trade);
  const own = new Map(learned.map(({ group, posterior }) => [group, posterior.shape]));
  return trade.groups.map(({ id, gammaShape }) => ({ id, shape: own.get(id) ?? gammaShape }));
}
