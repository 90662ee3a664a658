import type { Garage } from '@waymend/garage/record/schema';
import type { DragEvent, ReactNode } from 'react';
import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
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
  const [over, setOver] = useState(false);
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
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
  const drag = (event: DragEvent, isOver: boolean): void => {
    if (!event.dataTransfer.types.includes('Files')) return;
    event.preventDefault();
    setOver(isOver);
  };
  return (
    <div
      className={over ? 'drop over-it' : 'drop'}
      onDragEnter={(event) => drag(event, true)}
      onDragOver={(event) => drag(event, true)}
      onDragLeave={(event) => event.currentTarget === event.target && setOver(false)}
      onDrop={(event) => {
        drag(event, false);
        void take(event.dataTransfer.files[0]);
      }}
    >
      {children(
        <FileTrigger
          acceptedFileTypes={['.txt', '.csv', '.tsv', '.xlsx', 'text/plain', 'text/csv']}
          onSelect={(files) => void take(files?.[0])}
        >
          <Button onPress={() => undefined}>{t('belongings.chooseFile')}</Button>
        </FileTrigger>,
      )}
    </div>
  );
}
