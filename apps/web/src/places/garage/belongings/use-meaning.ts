import { useMemo } from 'react';
import { useFound } from './use-found.ts';

/** What a search means in the catalogue, in any region's words, as a set to look rows up in; null until it is known. */
export function useMeaning(search: string): ReadonlySet<string> | null {
  const { ids, of } = useFound(search);
  // What an older search meant would show what was not asked for.
  return useMemo(() => (of === search && search !== '' ? new Set(ids) : null), [ids, of, search]);
}
