import { useEffect, useState } from 'react';
import { useSettings, useStores } from './stores.tsx';
import type { Reply, Request } from '../worker/protocol.ts';

export interface Asked {
  /** The newest reply; it stays while the next one is on its way. Null until there is one. */
  readonly reply: Reply | null;
  /** The reply is to the request as it stands. */
  readonly fresh: boolean;
}

/**
 * Asks the worker again whenever the request changes, or the words the owner reads; null asks nothing. The request must be
 * memoised.
 */
export function useAsk(request: Request | null): Asked {
  const { reader } = useStores();
  const { wording } = useSettings();
  const [held, setHeld] = useState<{ readonly request: Request; readonly reply: Reply } | null>(null);
  useEffect(() => {
    if (request === null) return;
    let wanted = true;
    void reader.once(request).then((reply) => {
      if (wanted) setHeld({ request, reply });
    });
    return () => {
      wanted = false;
    };
    // A reply is in the words of the moment.
  }, [reader, request, wording]);
  return { reply: held?.reply ?? null, fresh: held !== null && held.request === request };
}
