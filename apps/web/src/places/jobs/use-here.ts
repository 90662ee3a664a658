import { useMemo } from 'react';
import { keptKit } from '../../shell/kept-kit.ts';
import { usePlan } from '../../shell/stores.tsx';
import type { Here } from '../../worker/jobs/protocol.ts';

export interface PlannedKit {
  /** Null: there is no kit to speak of yet. */
  readonly here: Here;
  /** From the newest answer, as it was kept from an earlier visit, or none at all. */
  readonly from: 'plan' | 'kept' | 'none';
}

/** The kit that is aboard by the plan; at once as it was last planned, later as it is. */
export function usePlannedKit(trip: string | null): PlannedKit {
  const { answer } = usePlan();
  const ofTrip = answer !== null && answer.trip.id === trip ? answer : null;
  return useMemo((): PlannedKit => {
    if (ofTrip !== null)
      return { here: ofTrip.kit.items.map(({ id, copies }) => ({ id, copies })), from: 'plan' };
    const kept = trip === null ? null : keptKit(trip);
    return kept === null ? { here: null, from: 'none' } : { here: kept, from: 'kept' };
  }, [ofTrip, trip]);
}
