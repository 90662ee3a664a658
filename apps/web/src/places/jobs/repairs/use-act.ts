import { useState } from 'react';
import { useRecord } from '../../../shell/stores.tsx';
import type { Change } from './act-words.ts';
import { asEdit, refusalOf } from './act-words.ts';

export interface Acting {
  /** Why the last act was not taken, in a sentence; null when it was. */
  readonly refusal: string | null;
  /** Whether it was taken. */
  readonly act: (title: string, change: Change) => boolean;
}

/** Acts on the record that may be refused: the sentence is shown, and nothing changes. */
export function useAct(): Acting {
  const { garage, edit } = useRecord();
  const [refusal, setRefusal] = useState<string | null>(null);
  const act = (title: string, change: Change): boolean => {
    const refused = refusalOf(garage, change);
    setRefusal(refused === null ? null : `${refused.message}.`);
    if (refused !== null) return false;
    void edit(title, asEdit(change));
    return true;
  };
  return { refusal, act };
}
