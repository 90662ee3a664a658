import { startTransition, useEffect, useState } from 'react';
import { useRecord, useStores } from '../../../shell/stores.tsx';

export interface Found {
  /** Likeliest first. */
  readonly ids: readonly string[];
  /** The search they answer: the one before until the reader has said more. */
  readonly of: string;
}

const NOTHING: Found = { ids: [], of: '' };

/** Catalogue ids that a search means, in any region's words. */
export function useFound(search: string): Found {
  const { reader } = useStores();
  const { words } = useRecord().garage;
  const [found, setFound] = useState(NOTHING);
  useEffect(() => {
    if (search.trim() === '') return;
    let wanted = true;
    void reader.once({ kind: 'belongings/find', text: search, words }).then((reply) => {
      // A letter typed meanwhile goes first.
      startTransition(() => {
        if (wanted && reply.kind === 'belongings/found') setFound({ of: search, ids: reply.ids });
      });
    });
    return () => {
      wanted = false;
    };
  }, [reader, search, words]);
  return search.trim() === '' ? NOTHING : found;
}
