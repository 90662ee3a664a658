import { useEffect, useState } from 'react';
import { useStores } from './stores.tsx';
import type { Reply, Request } from '../worker/protocol.ts';

export interface Asked {
  /** The newest reply; it stays while the next one is on its way. Null until there is one. */
  readonly reply: Reply | null;
  /** The reply is to the request as it stands. */
  readonly fresh: boolean;
}

/** Asks the worker again whenever the request changes; null asks nothing. The request must be memoised. */
export function useAsk(request: Request | null): Asked {
  const { reader } = useStores();
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
  }, [reader, request]);
  return { reply: held?.reply ?? null, fresh: held !== null && held.request === request };
}
