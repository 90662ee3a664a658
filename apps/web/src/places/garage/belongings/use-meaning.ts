import { useMemo } from 'react';
import { useFound } from './use-found.ts';

/** What a search means in the catalogue, whatever region's words it is in, as a set to look rows up in. */
export function useMeaning(search: string): ReadonlySet<string> | null {
  const ids = useFound(search);
  return useMemo(() => (ids === null ? null : new Set(ids)), [ids]);
}
