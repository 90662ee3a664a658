import { useCallback, useState } from 'react';
import type { Order, Shown } from '../choose-rows.ts';

export interface Sifting {
  readonly shown: Shown;
  readonly order: Order;
  readonly search: string;
}

/** Kept while the page is open, so that looking at one thing and coming back loses nothing. */
let kept: Sifting = { shown: 'all', order: 'name', search: '' };

export function useSifting(): [Sifting, (fields: Partial<Sifting>) => void] {
  const [sifting, set] = useState(kept);
  const change = useCallback((fields: Partial<Sifting>) => {
    kept = { ...kept, ...fields };
    set(kept);
  }, []);
  return [sifting, change];
}
