import type { RateInput, RateLeg } from '@waymend/core/failing/rate-input';
import type { RateTables } from '@waymend/core/failing/rate-tables';
import { kelvins, metres, millimetres } from '@waymend/core/quantity/units';
import type { Feature } from '@waymend/catalogue/shape/words';
import type { Garage, Leg, Trip, Vehicle } from '@waymend/garage/record/schema';

/** Mass over rating, from the load rules (M13). */
export interface Loadedness {
  readonly front: number;
  readonly rear: number;
  readonly gross: number;
  readonly roofOverloaded: boolean;
}

/** The record in the words of the rate rules (M1). */
export function rateInput(
  garage: Garage,
  trip: Trip,
  tripId: string,
  vehicle: Vehicle,
  features: ReadonlySet<Feature>,
  tables: RateTables,
  loaded: Loadedness,
  learned: NonNullable<RateInput['vehicle']['learned']> = [],
): RateInput {
  const { front, rear, gross, roofOverloaded } = loaded;
  return {
    tables,
    vehicle: {
      ...factsOf(vehicle, features),
      recentWork: vehicle.recentWork,
      weakPoints: Object.values(garage.weakPoints)
        .filter((w) => w.vehicle === trip.vehicle)
        .map(({ failure, factor, note }) => ({ failure, factor, ...(note === undefined ? {} : { note }) })),
      ...(learned.length === 0 ? {} : { learned }),
    },
    legs: legsOf(garage, tripId).map(([id, leg]) => rateLeg(id, leg)),
    trip: {
      days: trip.days,
      campNights: trip.campNights,
      driver: trip.driver,
      load: { front, rear, gross },
      roofOverloaded,
    },
  };
}

/** The legs of a trip in the order they are driven. */
export function legsOf(garage: Garage, tripId: string): readonly (readonly [string, Leg])[] {
  return Object.entries(garage.legs)
    .filter(([, leg]) => leg.trip === tripId)
    .sort(([a, x], [b, y]) => x.order - y.order || (a < b ? -1 : 1));
}

const CELSIUS = 273.15;

function rateLeg(id: string, leg: Leg): RateLeg {
  return {
    id,
    distance: metres(leg.km * 1000),
    surface: leg.surface,
    help: metres(leg.helpKm * 1000),
    ...(leg.iri === undefined ? {} : { iri: leg.iri }),
    stones: leg.stones,
    ...(leg.maxC === undefined ? {} : { hottest: kelvins(leg.maxC + CELSIUS) }),
    ...(leg.minC === undefined ? {} : { coldest: kelvins(leg.minC + CELSIUS) }),
    ...(leg.altitudeM === undefined ? {} : { altitude: metres(leg.altitudeM) }),
    winterFuel: leg.winterFuel,
    softTyres: leg.softTyres,
    dusty: leg.dusty,
    doubtfulFills: leg.doubtfulFills,
    resonancePace: leg.resonancePace,
    crossings: leg.crossings ?? {},
  };
}

/** What a vehicle is, whatever it is asked to do: the facts that a trip and the vehicle's own log share. */
export function factsOf(
  vehicle: Vehicle,
  features: ReadonlySet<Feature>,
): Omit<RateInput['vehicle'], 'recentWork' | 'weakPoints' | 'learned'> {
  return {
    features,
    ...(vehicle.ageYears === undefined ? {} : { ageYears: vehicle.ageYears }),
    ...(vehicle.odometerKm === undefined ? {} : { odometerKm: vehicle.odometerKm }),
    ...(vehicle.batteryAgeYears === undefined ? {} : { batteryAgeYears: vehicle.batteryAgeYears }),
    care: vehicle.care,
    lift: millimetres(vehicle.liftMm),
    tyreOversize: vehicle.tyreOversizePct / 100,
    addedCircuits: vehicle.addedCircuits,
  };
}
