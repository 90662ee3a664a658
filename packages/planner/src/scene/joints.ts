import type { VehiclePattern } from '@waymend/catalogue/shape/pattern';
import type { Place } from '@waymend/catalogue/shape/place';
import type { Feature } from '@waymend/catalogue/shape/words';
import { parseSize } from '@waymend/core/fastening/size';
import { newtonMetres } from '@waymend/core/quantity/units';
import type { Joint } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Fitting, Garage, Vehicle } from '@waymend/garage/record/schema';
import { holds } from './features.ts';

/** What is known about one spot, from the owner's record, the vehicle's pattern or the catalogue, in that order. */
interface Spot {
  readonly id: string;
  readonly position?: string;
  readonly status: Joint['status'];
  readonly drive?: Fitting['drive'];
  readonly size?: string;
  readonly torqueNm?: number;
  readonly access?: Fitting['access'];
  readonly counterHold?: Fitting['counterHold'];
}

/**
 * The joints of a vehicle: for every catalogue place the vehicle has, the owner's fittings; else the pattern's; else the
 * place's most usual size, marked assumed.
 */
export function jointsOf(
  garage: Garage,
  vehicleId: string,
  vehicle: Vehicle,
  features: ReadonlySet<Feature>,
  places: readonly Place[],
  pattern: VehiclePattern | null,
): Result<readonly Joint[]> {
  const joints: Joint[] = [];
  const own = new Map<string, Spot[]>();
  for (const [id, fitting] of Object.entries(garage.fittings)) {
    if (fitting.vehicle !== vehicleId) continue;
    own.set(fitting.place, [
      ...(own.get(fitting.place) ?? []),
      { ...withoutUndefined(fitting), id, status: fitting.status },
    ]);
  }
  for (const place of places) {
    const recorded = own.get(place.id) ?? [];
    // An owner's fitting proves that the place exists, whatever the features say.
    if (recorded.length === 0 && !holds(place.when, features)) continue;
    const known = new Set(recorded.map((s) => s.position ?? ''));
    // Once the owner has recorded any position of a place, only other named positions are still the pattern's to say.
    const fromPattern: Spot[] = (pattern?.fittings ?? [])
      .filter(
        (f) =>
          f.place === place.id &&
          (recorded.length === 0 || (f.position !== undefined && !known.has(f.position) && !known.has(''))),
      )
      .map((f) => ({ ...f, id: spotId(place.id, f.position), status: 'assumed' as const }));
    const spots = [...recorded, ...fromPattern];
    for (const spot of spots.length === 0 ? [{ id: place.id, status: 'assumed' as const }] : spots) {
      const joint = jointAt(place, spot, vehicle.rusty);
      if (!joint.ok) return joint;
      joints.push(joint.value);
    }
  }
  return ok(joints);
}

function spotId(place: string, position: string | undefined): string {
  return position === undefined ? place : `${place}@${position}`;
}

function withoutUndefined(fitting: Fitting): Omit<Spot, 'id' | 'status'> {
  return {
    ...(fitting.position === undefined ? {} : { position: fitting.position }),
    ...(fitting.drive === undefined ? {} : { drive: fitting.drive }),
    ...(fitting.size === undefined ? {} : { size: fitting.size }),
    ...(fitting.torqueNm === undefined ? {} : { torqueNm: fitting.torqueNm }),
    ...(fitting.access === undefined ? {} : { access: fitting.access }),
    ...(fitting.counterHold === undefined ? {} : { counterHold: fitting.counterHold }),
  };
}

function jointAt(place: Place, spot: Spot, rusty: boolean): Result<Joint> {
  const size = parseSize(spot.size ?? place.sizes[0]);
  if (!size.ok) return { ok: false, error: { ...size.error, path: `fittings.${spot.id}.size` } };
  const drive = spot.drive ?? place.drive;
  const held = spot.counterHold ?? place.counterHold ?? false;
  let hold: Joint['hold'];
  if (held !== false) {
    const holdSize = typeof held === 'object' ? parseSize(held.size) : size;
    if (!holdSize.ok)
      return { ok: false, error: { ...holdSize.error, path: `fittings.${spot.id}.counterHold` } };
    hold = { drive: (typeof held === 'object' ? held.drive : undefined) ?? drive, size: holdSize.value };
  }
  return ok({
    id: spot.id,
    place: place.id,
    title: spot.position === undefined ? place.title : `${place.title}, ${spot.position}`,
    ...(spot.position === undefined ? {} : { position: spot.position }),
    drive,
    size: size.value,
    torque: newtonMetres(spot.torqueNm ?? place.torqueNm[1]),
    access: spot.access ?? place.access,
    ...(hold === undefined ? {} : { hold }),
    stance: place.stance,
    ...(place.critical === undefined ? {} : { critical: place.critical }),
    // Wheel nuts are undone often enough not to rust in (M2).
    rusty: rusty && place.critical !== 'wheel',
    status: spot.status,
  });
}
