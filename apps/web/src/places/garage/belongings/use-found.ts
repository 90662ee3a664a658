import { useEffect, useState } from 'react';
import { useRecord, useStores } from '../../../shell/stores.tsx';

/** Catalogue ids a search means, likeliest first; null until the reader has said, or without a search. */
export function useFound(search: string): readonly string[] | null {
  const { reader } = useStores();
  const { words } = useRecord().garage;
  const [found, setFound] = useState<{ readonly search: string; readonly ids: readonly string[] } | null>(
    null,
  );
  useEffect(() => {
    if (search.trim() === '') return;
    let wanted = true;
    void reader.once({ kind: 'belongings/find', text: search, words }).then((reply) => {
      if (wanted && reply.kind === 'belongings/found') setFound({ search, ids: reply.ids });
    });
    return () => {
      wanted = false;
    };
  }, [reader, search, words]);
  return found !== null && found.search === search ? found.ids : null;
}
