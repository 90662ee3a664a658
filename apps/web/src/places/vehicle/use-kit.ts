import { useMemo } from 'react';
import { usePlan } from '../../shell/stores.tsx';
import type { KitLines } from '../../worker/vehicle/protocol.ts';

const NOTHING: KitLines = [];

/** What comes along by the newest answer; nothing until there is one. */
export function useKit(): { readonly kit: KitLines; readonly planned: boolean } {
  const { answer } = usePlan();
  return useMemo(
    () => ({
      kit: answer?.kit.items.map(({ id, name, grams, copies }) => ({ id, name, grams, copies })) ?? NOTHING,
      planned: answer !== null,
    }),
    [answer],
  );
}
