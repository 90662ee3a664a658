import type { Result } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { useState } from 'react';
import { useRecord } from '../../shell/stores.tsx';

export interface Acting {
  /** What the last act was refused for; null after one that was done. */
  readonly refused: string | null;
  /** Does one act as one step of undo; answers whether it was done. */
  readonly act: (title: string, apply: (garage: Garage) => Result<Garage>) => boolean;
}

/** Acts on the record that may be refused with a sentence. */
export function useActing(): Acting {
  const { garage, edit } = useRecord();
  const [refused, setRefused] = useState<string | null>(null);
  return {
    refused,
    act: (title, apply) => {
      const tried = apply(garage);
      setRefused(tried.ok ? null : tried.error.message);
      if (!tried.ok) return false;
      void edit(title, (now) => {
        const next = apply(now);
        return next.ok ? next.value : now;
      });
      return true;
    },
  };
}
