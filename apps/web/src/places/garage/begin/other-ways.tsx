import { FileTrigger } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { DropArea } from '../../../look/drop-area.tsx';
import { Block, Sentence } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { ownedPieces } from './the-way.ts';
import type { Opening } from './use-opening.ts';

/** The demo, and a garage file that is dropped or chosen. */
export function OtherWays({ opening, isMain }: { opening: Opening; isMain: boolean }) {
  const { t } = useTranslation();
  const { openDemo, openFile, isReading, refused } = opening;
  return (
    <>
      <Block title={t('begin.demoTitle')}>
        <p className="prose">{t('begin.demoWhat')}</p>
        <div>
          <Button onPress={() => void openDemo()} main={isMain} isDisabled={isReading}>
            {t('begin.openDemo')}
          </Button>
        </div>
      </Block>
      <Block title={t('begin.fileTitle')}>
        <p className="prose">{t('begin.fileWhat')}</p>
        <DropArea className="begin-drop" onFile={(file) => void openFile(file)}>
          <FileTrigger
            onSelect={(files) => {
              const file = files?.item(0);
              if (file) void openFile(file);
            }}
          >
            <Button onPress={() => undefined} isDisabled={isReading}>
              {t('begin.chooseFile')}
            </Button>
          </FileTrigger>
          <span className="quiet drop-words">{t('begin.drop')}</span>
        </DropArea>
        <div role="status" className="begin-reading">
          {isReading && <p>{t('begin.reading')}</p>}
          {refused.map((sentence) => (
            <Sentence key={sentence} strong>
              {sentence}
            </Sentence>
          ))}
          {refused.length > 0 && <p className="quiet">{t('begin.nothingChanged')}</p>}
        </div>
      </Block>
      <ReplaceDialog opening={opening} />
    </>
  );
}

/** Says what would be put aside before it is. */
export function ReplaceDialog({ opening: { waiting, accept, decline } }: { opening: Opening }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  return (
    <Dialog title={t('begin.replaceTitle')} isOpen={waiting !== null} onClose={decline}>
      <div className="block">
        <Sentence>
          {t('begin.replaceWhat', {
            name: waiting?.name ?? '',
            vehicles: Object.keys(garage.vehicles).length,
            pieces: ownedPieces(garage),
            trips: Object.keys(garage.trips).length,
          })}
        </Sentence>
        <div className="acts">
          <Button main onPress={() => void accept()}>
            {t('begin.replaceYes', { name: waiting?.name ?? '' })}
          </Button>
          <Button onPress={decline}>{t('begin.replaceNo')}</Button>
        </div>
      </div>
    </Dialog>
  );
}
