import type { Place } from '@waymend/catalogue/shape/place';
import type { Joint } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Feature, System } from '@waymend/catalogue/shape/words';
import type { Fitting, Garage } from '@waymend/garage/record/schema';
import { buildScene } from '../scene/build-scene.ts';
import { jointsOf } from '../scene/joints.ts';
import { featuresOf } from '../scene/towed.ts';
import type { Trade } from '../trade.ts';
import type { Area } from './areas.ts';
import { AREAS, areaOf } from './areas.ts';
import type { JointUse } from './joint-worth.ts';
import { jointUses } from './joint-worth.ts';

/** One place of a vehicle with what is known of it. */
export interface FittingRow {
  /** Joint id: that of the fitting, or 'place@position' while it is only assumed. */
  readonly id: string;
  /** Id of the record's fitting; null when nobody has recorded this place. */
  readonly fitting: string | null;
  /** The owner added it: neither the pattern nor what the vehicle has says that it is there. */
  readonly added: boolean;
  readonly place: string;
  readonly title: string;
  readonly position: string | null;
  readonly system: System;
  readonly area: Area;
  readonly drive: Joint['drive'];
  readonly size: string;
  readonly torqueNm: number;
  readonly access: Joint['access'];
  readonly hold: { readonly drive: Joint['drive']; readonly size: string } | null;
  readonly stance: Joint['stance'];
  readonly critical: Joint['critical'] | null;
  readonly status: Joint['status'];
  readonly by: string | null;
  readonly on: string | null;
  readonly note: string | null;
  readonly confirmed: boolean;
  /** Sizes that are met at such places, the most usual first. */
  readonly usual: readonly string[];
  /** Jobs of the trip that turn it, and the stops on the trip that they could end; nothing without a trip. */
  readonly jobs: readonly string[];
  readonly stops: number;
}

/**
 * Every place a vehicle has, in the order of a walk round it: the owner's fittings, else what its pattern or the catalogue
 * assumes. `tripId` says for which trip the jobs count; null counts none.
 */
export function fittingList(
  garage: Garage,
  vehicleId: string,
  tripId: string | null,
  trade: Trade,
): Result<readonly FittingRow[]> {
  const vehicle = Object.hasOwn(garage.vehicles, vehicleId) ? garage.vehicles[vehicleId] : undefined;
  if (vehicle === undefined)
    return refuse('vehicle-unknown', `There is no vehicle "${vehicleId}"`, { path: 'vehicles' });
  const pattern = trade.patterns.find((p) => p.id === vehicle.pattern) ?? null;
  const features = new Set<Feature>(featuresOf(vehicle, pattern));
  const joints = jointsOf(garage, vehicleId, vehicle, features, trade.places, pattern);
  if (!joints.ok) return joints;
  const usual = jointsOf({ ...garage, fittings: {} }, vehicleId, vehicle, features, trade.places, pattern);
  if (!usual.ok) return usual;
  const isUsual = saidWithoutOwner(usual.value);
  const uses = usesOn(garage, vehicleId, tripId, trade);
  const order = new Map(trade.places.map((p, n) => [p.id as string, n]));
  const places = new Map(trade.places.map((p) => [p.id as string, p]));
  const rows = joints.value.flatMap((joint): FittingRow[] => {
    const place = places.get(joint.place);
    return place === undefined
      ? []
      : [row(joint, place, garage.fittings[joint.id], uses.get(joint.id), isUsual(joint))];
  });
  return ok(
    rows.sort(
      (a, b) =>
        AREAS.indexOf(a.area) - AREAS.indexOf(b.area) ||
        (order.get(a.place) ?? 0) - (order.get(b.place) ?? 0) ||
        ((a.position ?? '') < (b.position ?? '') ? -1 : 1),
    ),
  );
}

/** Whether a joint would be there if the owner had recorded nothing; one without a position stands for every position. */
function saidWithoutOwner(joints: readonly Joint[]): (joint: Joint) => boolean {
  const places = new Set(joints.map(({ place }) => place));
  const spots = new Set(joints.map(({ place, position }) => `${place}@${position ?? ''}`));
  return ({ place, position }) =>
    position === undefined ? places.has(place) : spots.has(`${place}@${position}`);
}

/** What the trip's jobs ask of this vehicle; a trip that cannot be planned for yet asks nothing. */
function usesOn(
  garage: Garage,
  vehicleId: string,
  tripId: string | null,
  trade: Trade,
): ReadonlyMap<string, JointUse> {
  const trip = tripId === null ? undefined : garage.trips[tripId];
  if (tripId === null || (trip?.vehicle !== vehicleId && trip?.trailer !== vehicleId)) return new Map();
  const built = buildScene(garage, tripId, trade);
  return built.ok ? jointUses(built.value.scene) : new Map<string, JointUse>();
}

function row(
  joint: Joint,
  place: Place,
  fitting: Fitting | undefined,
  use: JointUse | undefined,
  isUsual: boolean,
): FittingRow {
  return {
    id: joint.id,
    fitting: fitting === undefined ? null : joint.id,
    added: fitting !== undefined && !isUsual,
    place: joint.place,
    title: place.title,
    position: joint.position ?? null,
    system: place.system,
    area: areaOf(place, joint.position),
    drive: joint.drive,
    size: joint.size.label,
    torqueNm: joint.torque,
    access: joint.access,
    hold: joint.hold === undefined ? null : { drive: joint.hold.drive, size: joint.hold.size.label },
    stance: joint.stance,
    critical: joint.critical ?? null,
    status: joint.status,
    by: fitting?.by ?? null,
    on: fitting?.on ?? null,
    note: fitting?.note ?? null,
    confirmed: fitting?.confirmed ?? false,
    usual: place.sizes,
    jobs: use?.jobs ?? [],
    stops: use?.stops ?? 0,
  };
}
