import { useMemo } from 'react';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import type { Walk } from '@waymend/planner/views/walk-order';
import { useRecord } from '../../shell/stores.tsx';
import { useTrip } from '../../shell/use-trip.ts';
import type { VehicleRequest } from '../../worker/vehicle/protocol.ts';
import { useAsk } from '../../shell/use-ask.ts';

export interface Fittings {
  readonly rows: readonly FittingRow[] | null;
  readonly walk: Walk | null;
  readonly refusal: string | null;
}

/** Every place of a vehicle, as the record and its pattern say. */
export function useFittings(vehicle: string | null): Fittings {
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const request = useMemo(
    (): VehicleRequest | null =>
      vehicle === null ? null : { kind: 'vehicle/fittings', garage, vehicle, trip: tripId },
    [garage, vehicle, tripId],
  );
  const { reply } = useAsk(request);
  if (reply?.kind === 'vehicle/fittings') return { rows: reply.rows, walk: reply.walk, refusal: null };
  return {
    rows: null,
    walk: null,
    refusal: reply?.kind === 'refused' ? (reply.refusals[0]?.message ?? '') : null,
  };
}
