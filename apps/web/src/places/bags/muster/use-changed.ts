import type { Garage } from '@waymend/garage/record/schema';
import { useState } from 'react';
import { usePlan, useStores } from '../../../shell/stores.tsx';
import type { BagsReply } from '../../../worker/bags/protocol.ts';

export type Changed = Extract<BagsReply, { readonly kind: 'bags/changed' }>;

export interface Changing {
  /** 'asked' while the worker counts; null before a muster was closed here. */
  readonly changed: Changed | 'asked' | { readonly refused: string } | null;
  readonly ask: (before: Garage, after: Garage, trip: string) => void;
  /** There is a plan whose kit can be compared. */
  readonly canAsk: (trip: string | undefined) => boolean;
}

/** What closing a muster did to the chance of the kit that was planned. */
export function useChanged(): Changing {
  const { reader } = useStores();
  const { answer } = usePlan();
  const [changed, setChanged] = useState<Changing['changed']>(null);
  return {
    changed,
    canAsk: (trip) => answer !== null && answer.trip.id === trip,
    ask: (garage, after, trip) => {
      const kit = (answer?.kit.items ?? []).flatMap(({ id, copies, bought }) =>
        bought ? [] : [{ id, copies }],
      );
      setChanged('asked');
      void reader.once({ kind: 'bags/changed', garage, after, trip, kit }).then((reply) => {
        if (reply.kind === 'bags/changed') setChanged(reply);
        else if (reply.kind === 'refused') setChanged({ refused: reply.refusals[0]?.message ?? '' });
        else setChanged(null);
      });
    },
  };
}
