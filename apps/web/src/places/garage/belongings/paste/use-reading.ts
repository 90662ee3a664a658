import type { ImportReading } from '@waymend/garage/import/reading';
import type { Garage } from '@waymend/garage/record/schema';
import { useEffect, useRef, useState } from 'react';
import type { Suggested } from '../../../../worker/belongings/protocol.ts';
import { useStores } from '../../../../shell/stores.tsx';

export type Suggestions = Readonly<Record<string, Suggested>>;

const NONE: Suggestions = {};

/** Long enough that a word is not read letter by letter, short enough to follow the hand. */
const PAUSE_MS = 140;

export interface LiveReading {
  readonly reading: ImportReading | null;
  readonly suggested: Suggestions;
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
    suggested: NONE,
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
        const nothing = { reading: null, suggested: NONE, stale: false, of: text };
        if (reply.kind === 'belongings/reading') setLive({ ...nothing, ...reply, refusal: null });
        else if (reply.kind === 'refused')
          setLive({ ...nothing, refusal: reply.refusals[0]?.message ?? null });
        else if (reply.kind === 'broken') setLive({ ...nothing, refusal: reply.cause });
      });
    }, wait);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [reader, text, words]);
  return { reading: live.reading, suggested: live.suggested, refusal: live.refusal, stale: live.of !== text };
}
