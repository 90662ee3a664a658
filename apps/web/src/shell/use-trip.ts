import type { Trip, Vehicle } from '@waymend/garage/record/schema';
import { useRecord, useSettings } from './stores.tsx';

export interface OpenTrip {
  readonly tripId: string | null;
  readonly trip: Trip | null;
  readonly vehicleId: string | null;
  readonly vehicle: Vehicle | null;
}

/** The trip that is open on this device (the first one when none was chosen) and its vehicle. */
export function useTrip(): OpenTrip {
  const { garage } = useRecord();
  const settings = useSettings();
  return openTrip(garage, settings.trip);
}

export function openTrip(
  garage: {
    readonly trips: Readonly<Record<string, Trip>>;
    readonly vehicles: Readonly<Record<string, Vehicle>>;
  },
  chosen: string | null,
): OpenTrip {
  const tripId =
    chosen !== null && garage.trips[chosen] !== undefined ? chosen : (Object.keys(garage.trips)[0] ?? null);
  const trip = tripId === null ? null : (garage.trips[tripId] ?? null);
  const vehicleId = trip?.vehicle ?? Object.keys(garage.vehicles)[0] ?? null;
  return {
    tripId,
    trip,
    vehicleId,
    vehicle: vehicleId === null ? null : (garage.vehicles[vehicleId] ?? null),
  };
}
