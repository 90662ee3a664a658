import type { Garage } from '@waymend/garage/record/schema';
import { FIRST_LEG, FIRST_STAY } from '@waymend/garage/start/first-guess';

/** The four steps from nothing to a kit, in the order of the work. */
export const STEPS = ['vehicle', 'belongings', 'trip', 'kit'] as const;
export type StepId = (typeof STEPS)[number];

/** assumed: there, but typical numbers nobody has looked at; later: waits for the steps before it. */
export type StepState = 'done' | 'assumed' | 'open' | 'later';

export interface Step {
  readonly id: StepId;
  readonly state: StepState;
  /** The one step to take now. */
  readonly isNext: boolean;
}

/** Where a garage stands on the way; `hasKit`: an answer to the open trip is there. */
export function wayOf(garage: Garage, tripId: string | null, hasKit: boolean): readonly Step[] {
  const trip = tripId === null ? undefined : garage.trips[tripId];
  const vehicle = trip === undefined ? firstVehicle(garage) : garage.vehicles[trip.vehicle];
  const owned = ownedPieces(garage);
  const states: Readonly<Record<StepId, StepState>> = {
    vehicle: vehicle === undefined ? 'open' : vehicle.ratingsAssumed === true ? 'assumed' : 'done',
    belongings: owned > 0 ? 'done' : 'open',
    trip: vehicle === undefined ? 'later' : stateOfTrip(garage, tripId),
    kit: owned === 0 || trip === undefined ? 'later' : hasKit ? 'done' : 'open',
  };
  // Typical ratings do for a first plan; a trip nobody has looked at does not.
  const next = STEPS.find((id) => {
    const state = states[id];
    return state === 'open' || (id === 'trip' && state === 'assumed');
  });
  return STEPS.map((id) => ({ id, state: states[id], isNext: id === next }));
}

/** Everything owned, copies counted; what is for sale, and the cases of sets, are not. */
export function ownedPieces({ belongings }: Garage): number {
  return Object.values(belongings).reduce(
    (sum, { copies, forSale, set }) => sum + (forSale || set !== undefined ? 0 : copies),
    0,
  );
}

/** Pieces whose mass somebody has read off a scale. */
export function weighedPieces({ belongings }: Garage): number {
  return Object.values(belongings).reduce(
    (sum, { copies, forSale, set, weighed }) => sum + (weighed && !forSale && set === undefined ? copies : 0),
    0,
  );
}

/** Nothing that a demo or a file would put aside. */
export function isEmpty(garage: Garage): boolean {
  return Object.values(garage).every((part) => typeof part !== 'object' || Object.keys(part).length === 0);
}

function firstVehicle({ vehicles }: Garage): Garage['vehicles'][string] | undefined {
  return Object.values(vehicles).find(({ kind }) => kind === 'vehicle');
}

function stateOfTrip(garage: Garage, tripId: string | null): StepState {
  if (tripId === null) return 'open';
  const legs = Object.values(garage.legs).filter(({ trip }) => trip === tripId);
  if (!(legs.reduce((sum, { km }) => sum + km, 0) > 0)) return 'open';
  return isFirstGuess(garage, tripId) ? 'assumed' : 'done';
}

/** The trip that came with the vehicle, as it came. */
function isFirstGuess(garage: Garage, tripId: string): boolean {
  const trip = garage.trips[tripId];
  const [leg, ...others] = Object.values(garage.legs).filter((one) => one.trip === tripId);
  if (trip === undefined || leg === undefined || others.length > 0) return false;
  const { km, surface, helpKm, stones } = FIRST_LEG;
  return (
    leg.km === km &&
    leg.surface === surface &&
    leg.helpKm === helpKm &&
    leg.stones === stones &&
    trip.days === FIRST_STAY.days &&
    trip.campNights === FIRST_STAY.campNights
  );
}
