import type { ImportReading } from '@waymend/garage/import/reading';
import type { Garage } from '@waymend/garage/record/schema';
import { useEffect, useRef, useState } from 'react';
import { useStores } from '../../../../shell/stores.tsx';

/** Long enough that a word is not read letter by letter, short enough to follow the hand. */
const PAUSE_MS = 140;

export interface LiveReading {
  readonly reading: ImportReading | null;
  /** Why the whole text cannot be read. */
  readonly refusal: string | null;
  /** What stands here is of an older text. */
  readonly stale: boolean;
}

/** Reads what is typed, in the worker, a moment after the last letter; the newest text wins. */
export function useReading(text: string, words: Garage['words']): LiveReading {
  const { reader } = useStores();
  const [live, setLive] = useState<LiveReading & { readonly of: string | null }>({
    reading: null,
    refusal: null,
    stale: false,
    of: null,
  });
  const first = useRef(true);
  useEffect(() => {
    let wanted = true;
    const wait = first.current ? 0 : PAUSE_MS;
    first.current = false;
    const timer = setTimeout(() => {
      void reader.once({ kind: 'belongings/read', text, words }).then((reply) => {
        if (!wanted) return;
        if (reply.kind === 'belongings/reading')
          setLive({ reading: reply.reading, refusal: null, stale: false, of: text });
        else if (reply.kind === 'refused')
          setLive({ reading: null, refusal: reply.refusals[0]?.message ?? null, stale: false, of: text });
        else if (reply.kind === 'broken')
          setLive({ reading: null, refusal: reply.cause, stale: false, of: text });
      });
    }, wait);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [reader, text, words]);
  return { reading: live.reading, refusal: live.refusal, stale: live.of !== text };
}
