import { useMemo } from 'react';
import type { VehicleFacts } from '../../worker/vehicle/protocol.ts';
import { useAsk } from '../../shell/use-ask.ts';

const REQUEST = { kind: 'vehicle/facts' } as const;

/** What the catalogue offers to choose from; null for the moment until the worker has said. */
export function useFacts(): VehicleFacts | null {
  const request = useMemo(() => REQUEST, []);
  const { reply } = useAsk(request);
  return reply?.kind === 'vehicle/facts' ? reply.facts : null;
}
