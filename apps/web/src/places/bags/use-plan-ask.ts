import type { Garage } from '@waymend/garage/record/schema';
import type { Question } from '@waymend/planner/plan/plan-trip';
import { useEffect, useState } from 'react';
import { useQuestion } from '../../shell/aim.ts';
import { usePlan, useRecord, useStores } from '../../shell/stores.tsx';
import { useTrip } from '../../shell/use-trip.ts';
import type { Reply, Request } from '../../worker/protocol.ts';

export interface PlanAsked {
  /** The newest reply; it stays while the next one is on its way. */
  readonly reply: Reply | null;
  /** The reply is to the record as it stands. */
  readonly fresh: boolean;
}

/** Asks something of the plan that stands, once it does, and again after each change. `make` must be memoised. */
export function usePlanAsk(make: (garage: Garage, trip: string, question: Question) => Request): PlanAsked {
  const { client } = useStores();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const question = useQuestion();
  const { fresh, proving, answer } = usePlan();
  const stands = fresh && !proving && answer !== null && answer.trip.id === tripId;
  const [held, setHeld] = useState<{
    readonly garage: Garage;
    readonly make: unknown;
    readonly reply: Reply;
  } | null>(null);
  useEffect(() => {
    if (!stands) return undefined;
    let wanted = true;
    void client.once(make(garage, tripId, question)).then((reply) => {
      if (wanted) setHeld({ garage, make, reply });
    });
    return () => {
      wanted = false;
    };
  }, [client, garage, tripId, question, stands, make]);
  return { reply: held?.reply ?? null, fresh: held !== null && held.garage === garage && held.make === make };
}
