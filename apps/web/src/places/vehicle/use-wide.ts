import { useSyncExternalStore } from 'react';

const query = matchMedia('(min-width: 900px)');

function subscribe(listener: () => void): () => void {
  query.addEventListener('change', listener);
  return () => query.removeEventListener('change', listener);
}

/** Whether the sheet has the width of a desk: the same step as in the styles. */
export function useWide(): boolean {
  return useSyncExternalStore(subscribe, () => query.matches);
}
