import type { ImportMatch } from '@waymend/garage/import/reading';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { useRecord, useStores } from '../../../../shell/stores.tsx';
import { addAll } from '../add-all.ts';
import { BLANK, draftStore } from './draft.ts';
import type { Tally } from './tally.ts';

/** Doubted masses said one by one; the rest are counted. */
const SAID = 3;

export interface Adding {
  readonly busy: boolean;
  /** Things the garage has from the same lines already; while there are some, the owner is asked. */
  readonly repeated: readonly ImportMatch[];
  /** What was done, in a sentence. */
  readonly done: string | null;
  /** 'ask' adds at once unless something is repeated; then 'all' or 'others' says which. */
  readonly add: (which: 'ask' | 'all' | 'others') => Promise<void>;
  readonly forget: () => void;
}

/** Puts what was read into the record as one step; lines that were not understood stay on the paper. */
export function useAdd(tally: Tally): Adding {
  const { t } = useTranslation();
  const format = useFormat();
  const { reader } = useStores();
  const { garage, edit } = useRecord();
  const [busy, setBusy] = useState(false);
  const [repeated, setRepeated] = useState<readonly ImportMatch[]>([]);
  const [done, setDone] = useState<string | null>(null);
  const make = async (matches: readonly ImportMatch[]) => {
    const { belongings, bags, berths } = garage;
    const reply = await reader.once({
      kind: 'belongings/make',
      into: { belongings, bags, berths },
      matches,
    });
    if (reply.kind !== 'belongings/made')
      throw new Error(reply.kind === 'broken' ? reply.cause : 'nothing was made');
    return reply;
  };
  const add: Adding['add'] = async (which) => {
    setBusy(true);
    try {
      const again = new Set(repeated);
      const matches = which === 'others' ? tally.matches.filter((match) => !again.has(match)) : tally.matches;
      const made = await make(matches);
      if (which === 'ask' && made.repeated.length > 0) {
        setRepeated(made.repeated.flatMap((i) => matches[i] ?? []));
        return;
      }
      setRepeated([]);
      const count = matches.length + tally.own.length;
      const { taught } = draftStore.get();
      if (count > 0) {
        await edit(t('belongings.stepList', { count, number: format.count(count) }), (before) =>
          addAll(before, made.added, tally.own, taught),
        );
      }
      draftStore.set({ ...BLANK, text: tally.left.join('\n') });
      const said = [t('belongings.added', { count, number: format.count(count) })];
      if (tally.left.length > 0) said.push(t('belongings.leftOver', { count: tally.left.length }));
      const { unbelieved } = made;
      if (unbelieved.length > 0) {
        said.push(...unbelieved.slice(0, SAID).map((sentence) => `${sentence}.`));
        if (unbelieved.length > SAID)
          said.push(t('belongings.moreUnbelieved', { count: unbelieved.length - SAID }));
        said.push(t('belongings.weighThem'));
      }
      setDone(said.join(' '));
    } finally {
      setBusy(false);
    }
  };
  return {
    busy,
    repeated,
    done,
    add,
    forget: () => {
      setRepeated([]);
      setDone(null);
    },
  };
}
