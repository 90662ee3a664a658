import type { Garage } from '@waymend/garage/record/schema';
import type { LoadAnswer, Margin } from '../answer/plan-answer.ts';

/** The load limit that a heavier kit reaches first, and the kit's mass when it does. */
export interface FirstFull {
  readonly what: 'front' | 'rear' | 'gross' | 'roof' | 'tyres-front' | 'tyres-rear';
  /** Whole grams of kit, rounded down; less than the kit's own mass when the limit is already passed. */
  readonly grams: number;
}

/**
 * Where the vehicle's own limits end the curve of mass (M13): each gram more rides where the kit rides, which is over the
 * rear axle when the trip names no berth. Berths are not looked at: what does not fit into one may ride in another. Null
 * when nothing limits the load.
 */
export function firstFull(
  load: LoadAnswer,
  kitGrams: number,
  garage: Pick<Garage, 'trips' | 'vehicles' | 'berths'>,
  tripId: string,
): FirstFull | null {
  const trip = garage.trips[tripId];
  const vehicle = trip === undefined ? undefined : garage.vehicles[trip.vehicle];
  if (trip === undefined || vehicle === undefined) return null;
  const berth = trip.kitBerth === undefined ? undefined : garage.berths[trip.kitBerth];
  const rear = (berth?.xMm ?? vehicle.wheelbaseMm) / vehicle.wheelbaseMm;
  const front = 1 - rear;
  const rows: readonly (FirstFull | null)[] = [
    full('gross', load.gross, 1),
    full('rear', load.rear, rear),
    full('front', load.front, front),
    full('tyres-rear', load.tyres?.rear ?? null, rear),
    full('tyres-front', load.tyres?.front ?? null, front),
    full('roof', load.roof, berth?.roof === true ? 1 : 0),
  ];
  return rows.reduce((first, row) =>
    first === null || (row !== null && row.grams < first.grams) ? row : first,
  );

  function full(what: FirstFull['what'], margin: Margin | null, share: number): FirstFull | null {
    // A share of nothing never fills it, and what lifts an axle empties it.
    if (margin?.marginKg === null || margin?.marginKg === undefined || share <= 0) return null;
    return { what, grams: Math.floor(kitGrams + (margin.marginKg * 1000) / share) };
  }
}
