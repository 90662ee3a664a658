import type { Garage } from '@waymend/garage/record/schema';
import type { StockOf } from '@waymend/garage/road/count-pieces';
import { useMemo } from 'react';
import { useRecord, useSettings } from '../../shell/stores.tsx';
import { useAsk } from '../../shell/use-ask.ts';
import type { BagThing } from '../../worker/bags/protocol.ts';

export type Things = Readonly<Record<string, BagThing>>;

/** What the catalogue knows of the belongings; null until the worker has said. The last answer stays while the next comes. */
export function useThings(): Things | null {
  const { garage } = useRecord();
  const { wording } = useSettings();
  const { belongings } = garage;
  // Counting changes the garage at each press, and what its things are only seldom.
  const request = useMemo(
    () => ({ kind: 'bags/things' as const, garage, wording }),
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [belongings, wording],
  );
  const { reply } = useAsk(request);
  return reply?.kind === 'bags/things' ? reply.things : null;
}

/** What the garage's counting asks the catalogue, answered from what the worker has said. */
export function stockOfThings(garage: Garage, things: Things): StockOf {
  const known = new Map<string, number | null>();
  for (const [id, { is }] of Object.entries(garage.belongings))
    if (is !== undefined) known.set(is, things[id]?.asNew ?? null);
  return (is) => known.get(is) ?? null;
}

/** The name people read: the owner's, else the catalogue's. */
export function nameIn(garage: Garage, things: Things | null, id: string): string {
  const thing = garage.belongings[id];
  return thing?.name ?? things?.[id]?.name ?? thing?.line ?? id;
}
