import { useMemo } from 'react';
import { useAsk } from '../../../shell/use-ask.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { JobsReply, JobsRequest } from '../../../worker/jobs/protocol.ts';

type List = Extract<JobsReply, { kind: 'jobs/list' }>;

/** What this vehicle can show and every job it has; null until the worker has told. */
export function useJobList(): { readonly list: List | null; readonly refusal: string | null } {
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const request = useMemo(
    (): JobsRequest | null => (tripId === null ? null : { kind: 'jobs/list', garage, trip: tripId }),
    [garage, tripId],
  );
  const { reply } = useAsk(request);
  return {
    list: reply?.kind === 'jobs/list' ? reply : null,
    refusal: reply?.kind === 'refused' ? (reply.refusals[0]?.message ?? '') : null,
  };
}
