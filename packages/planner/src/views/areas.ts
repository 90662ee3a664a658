import type { Place } from '@waymend/catalogue/shape/place';
import type { PlaceId } from '@waymend/catalogue/shape/place-ids';
import type { System } from '@waymend/catalogue/shape/words';

/** Parts of a vehicle in the order of a walk round it: one position of the body for each. */
export const AREAS = ['front-axle', 'engine-bay', 'underbody', 'rear', 'wheels', 'accessories'] as const;
export type Area = (typeof AREAS)[number];

/** 'axle': at the front or the rear axle, as the position says. */
type Spot = Area | 'axle';

const BY_SYSTEM: Readonly<Record<System, Spot>> = {
  'wheels-tyres': 'wheels',
  brakes: 'axle',
  driveline: 'axle',
  'suspension-steering': 'axle',
  cooling: 'engine-bay',
  'fuel-air': 'engine-bay',
  'starting-charging': 'engine-bay',
  wiring: 'engine-bay',
  'body-trailer': 'accessories',
  exhaust: 'underbody',
  'clutch-gearbox': 'underbody',
  'engine-oil': 'engine-bay',
  'keys-glass': 'accessories',
};

/** Places that are not where their system mostly is (common practice). */
const ELSEWHERE: Readonly<Partial<Record<PlaceId, Spot>>> = {
  'prop-flange-front': 'underbody',
  'prop-flange-rear': 'underbody',
  'gearbox-fill-plug': 'underbody',
  'transfer-fill-plug': 'underbody',
  'body-mount-bolt': 'underbody',
  'fuel-tank-plug': 'underbody',
  'sump-plug': 'underbody',
  'oxygen-sensor': 'underbody',
  'bash-plate-bolt': 'underbody',
  'steering-pipe-union': 'engine-bay',
  'wheel-cylinder-bolt': 'rear',
  'parking-brake-adjuster': 'rear',
  'wheel-nut-trailer': 'wheels',
  'tow-hitch-bolt': 'rear',
  'towball-nut': 'rear',
  'trailer-hub-nut': 'rear',
  'trailer-u-bolt': 'rear',
  'manifold-nut': 'engine-bay',
  'clutch-union': 'engine-bay',
};

/** Where on the vehicle a place is. Without a position, what axles have is looked at on the front one first. */
export function areaOf({ id, system }: Pick<Place, 'id' | 'system'>, position: string | undefined): Area {
  const spot = ELSEWHERE[id] ?? BY_SYSTEM[system];
  if (spot !== 'axle') return spot;
  return position?.includes('rear') === true ? 'rear' : 'front-axle';
}
