import type { Result } from '@waymend/core/result';
import { useCallback, useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { KeptGarage } from '../../../record/garages.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { fileName, saveFile } from '../record/save-file.ts';

export interface Shelf {
  /** Null while they are read. */
  readonly garages: readonly KeptGarage[] | null;
  /** What was done, or why it was not. */
  readonly said: string | null;
  readonly rename: (kept: KeptGarage, name: string) => Promise<void>;
  readonly copy: (kept: KeptGarage) => Promise<void>;
  readonly remove: (kept: KeptGarage) => Promise<void>;
  readonly make: (name: string) => Promise<void>;
}

/** The garages of this browser as a list that is read anew after every act, and after every step of the one that is open. */
export function useShelf(): Shelf {
  const { t } = useTranslation();
  const { shelf, reader, today } = useStores();
  const { edit, history, noteCopyMade, changesSinceCopy, saved } = useRecord();
  const [garages, setGarages] = useState<readonly KeptGarage[] | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const show = useCallback((list: Result<readonly KeptGarage[]>) => {
    if (list.ok) setGarages(list.value);
    else setSaid(list.error.message);
  }, []);
  const steps = history.length;
  useEffect(() => {
    let wanted = saved === 'saved';
    if (wanted) void shelf.list().then((list) => wanted && show(list));
    return () => {
      wanted = false;
    };
  }, [shelf, show, steps, changesSinceCopy, saved]);
  const after = async (work: Promise<Result<unknown>>, done: string | null): Promise<void> => {
    const result = await work;
    setSaid(result.ok ? done : result.error.message);
    show(await shelf.list());
  };
  return {
    garages,
    said,
    rename: async ({ key }, name) => {
      const title = t('shelf.renamed', { name });
      if (key === shelf.openKey) await edit(title, (before) => ({ ...before, name }));
      else await after(shelf.rename(key, title, name), null);
    },
    copy: async ({ key, garage, steps: count }) => {
      const reply = await reader.once({ kind: 'write', garage });
      if (reply.kind !== 'text') {
        setSaid(t('record.notWritten'));
        return;
      }
      const name = `${fileName(garage.name, today(), 'garage')}.garage.yaml`;
      saveFile(reply.text, name, 'text/yaml');
      if (key === shelf.openKey) await noteCopyMade();
      await after(shelf.noteCopy(key, count), t('record.copyMade', { name }));
    },
    remove: ({ key, garage }) => after(shelf.remove(key), t('shelf.gone', { name: garage.name })),
    make: (name) => after(shelf.make(t('shelf.made', { name }), name), null),
  };
}
