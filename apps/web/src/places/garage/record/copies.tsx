import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Block, Sentence } from '../../../look/parts.tsx';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { ReplaceDialog } from '../begin/other-ways.tsx';
import { useOpening } from '../begin/use-opening.ts';
import { fileName, saveFile } from './save-file.ts';

/** A copy out of this browser, a copy back into it, and the belongings as a table. */
export function Copies() {
  const { t } = useTranslation();
  const { reader, today } = useStores();
  const { garage, changesSinceCopy, noteCopyMade } = useRecord();
  const opening = useOpening();
  const [said, setSaid] = useState<string | null>(null);
  const write = async (kind: 'write' | 'belongings/csv'): Promise<void> => {
    const reply = await reader.once({ kind, garage });
    if (reply.kind !== 'text') {
      setSaid(reply.kind === 'broken' ? t('app.broken', { cause: reply.cause }) : t('record.notWritten'));
      return;
    }
    const name = fileName(garage.name, today(), 'garage');
    if (kind === 'write') {
      saveFile(reply.text, `${name}.garage.yaml`, 'text/yaml');
      await noteCopyMade();
      setSaid(t('record.copyMade', { name: `${name}.garage.yaml` }));
    } else {
      saveFile(reply.text, `${name}-belongings.csv`, 'text/csv');
      setSaid(t('record.csvMade', { name: `${name}-belongings.csv` }));
    }
  };
  return (
    <Block
      title={t('record.copies')}
      aside={changesSinceCopy === 0 ? t('record.upToDate') : t('record.since', { count: changesSinceCopy })}
    >
      <Sentence>{t('record.copiesWhat')}</Sentence>
      <div className="acts">
        <Button main onPress={() => void write('write')}>
          {t('record.keepCopy')}
        </Button>
        <FileTrigger
          acceptedFileTypes={['.yaml', '.yml', '.json']}
          onSelect={(files) => {
            const file = files?.[0];
            setSaid(null);
            if (file !== undefined) void opening.openFile(file);
          }}
        >
          <Button onPress={() => undefined} isDisabled={opening.isReading}>
            {t('record.openCopy')}
          </Button>
        </FileTrigger>
        <Button onPress={() => void write('belongings/csv')}>{t('record.csv')}</Button>
      </div>
      <div role="status" className="record-said">
        {opening.isReading && <p>{t('begin.reading')}</p>}
        {said !== null && <p>{said}</p>}
        {opening.refused.map((sentence) => (
          <Sentence key={sentence} strong>
            {sentence}
          </Sentence>
        ))}
        {opening.refused.length > 0 && <p className="quiet">{t('begin.nothingChanged')}</p>}
      </div>
      <ReplaceDialog opening={opening} />
    </Block>
  );
}
