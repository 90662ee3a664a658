import { useSyncExternalStore } from 'react';

const query = matchMedia('(min-width: 900px)');

/** A desk rather than a phone: lists side by side, the curve in the flow of the sheet. */
export function useWide(): boolean {
  return useSyncExternalStore(
    (listener) => {
      query.addEventListener('change', listener);
      return () => query.removeEventListener('change', listener);
    },
    () => query.matches,
  );
}
