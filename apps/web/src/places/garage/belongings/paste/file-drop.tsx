import type { Garage } from '@waymend/garage/record/schema';
import type { ReactNode } from 'react';
import { FileTrigger } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { DropArea } from '../../../../look/drop-area.tsx';
import { useStores } from '../../../../shell/stores.tsx';
import { tooLarge } from '../file-limit.ts';
import { BLANK, draftStore } from './draft.ts';

export interface FileDropProps {
  readonly words: Garage['words'];
  /** A sentence when a file cannot be read; nothing has been changed then. */
  readonly onTrouble: (sentence: string | null) => void;
  readonly children: (chooser: ReactNode) => ReactNode;
}

/** Takes a list, a table or a spreadsheet that is dropped or chosen. Its size is looked at before any of it is read. */
export function FileDrop({ words, onTrouble, children }: FileDropProps) {
  const { t } = useTranslation();
  const { reader } = useStores();
  const take = async (file: File): Promise<void> => {
    onTrouble(null);
    const refused = tooLarge(file);
    if (refused !== null) {
      onTrouble(t('belongings.tooLarge', refused));
      return;
    }
    let bytes: Uint8Array;
    try {
      bytes = new Uint8Array(await file.arrayBuffer());
    } catch {
      onTrouble(t('belongings.unreadable', { name: file.name }));
      return;
    }
    const reply = await reader.once({ kind: 'belongings/read-file', bytes, name: file.name, words });
    if (reply.kind === 'refused') onTrouble(reply.refusals[0]?.message ?? null);
    else if (reply.kind === 'broken') onTrouble(reply.cause);
    else if (reply.kind === 'belongings/reading') {
      draftStore.set(
        reply.list === null
          ? {
              ...BLANK,
              text: draftStore.get().text,
              file: { name: file.name, reading: reply.reading, suggested: reply.suggested },
            }
          : { ...BLANK, text: reply.list },
      );
    }
  };
  return (
    <DropArea onFile={(file) => void take(file)}>
      {children(
        <FileTrigger
          acceptedFileTypes={['.txt', '.csv', '.tsv', '.xlsx', 'text/plain', 'text/csv']}
          onSelect={(files) => {
            const file = files?.[0];
            if (file !== undefined) void take(file);
          }}
        >
          <Button onPress={() => undefined}>{t('belongings.chooseFile')}</Button>
        </FileTrigger>,
      )}
    </DropArea>
  );
}
