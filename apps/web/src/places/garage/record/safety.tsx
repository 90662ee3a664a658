import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Block, Sentence } from '../../../look/parts.tsx';
import { askPersistence } from '../../../record/persistence.ts';
import type { PhotoTotals } from '../../../record/photos.ts';
import { useStores } from '../../../shell/stores.tsx';

type Kept = 'asking' | 'yes' | 'no' | 'unknown';

/** Whether this browser may throw the record away when it runs short of room, and asking it not to. */
export function Safety() {
  const { t } = useTranslation();
  const [kept, setKept] = useState<Kept>('asking');
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    let wanted = true;
    void persisted().then((found) => wanted && setKept(found));
    return () => {
      wanted = false;
    };
  }, []);
  const photos = usePhotoTotals();
  const ask = async (): Promise<void> => {
    const yes = await askPersistence(storage());
    setAsked(true);
    setKept(yes ? 'yes' : 'no');
  };
  return (
    <Block title={t('record.safety')}>
      <div className="record-safety" role="status">
        <Sentence strong>{t(`record.kept_${kept}`)}</Sentence>
        <Sentence>{t(kept === 'no' && asked ? 'record.keptRefused' : `record.kept_${kept}_means`)}</Sentence>
        <Sentence>
          {photos === null || photos.count === 0
            ? t('record.photosNone')
            : t('record.photos', { count: photos.count, size: sizeWords(photos.bytes) })}
        </Sentence>
      </div>
      {kept === 'no' && (
        <div className="acts">
          <Button onPress={() => void ask()}>{t('record.askKeep')}</Button>
        </div>
      )}
    </Block>
  );
}

function usePhotoTotals(): PhotoTotals | null {
  const { photos } = useStores();
  const [totals, setTotals] = useState<PhotoTotals | null>(null);
  useEffect(() => {
    let wanted = true;
    void photos.totals().then((found) => wanted && found.ok && setTotals(found.value));
    return () => {
      wanted = false;
    };
  }, [photos]);
  return totals;
}

/** '180 kB', '1.2 MB'. */
function sizeWords(bytes: number): string {
  return bytes < 1e6 ? `${Math.ceil(bytes / 1000)}\u00a0kB` : `${(bytes / 1e6).toFixed(1)}\u00a0MB`;
}

/** Browsers that stand alone may have none. */
function storage(): StorageManager | undefined {
  return 'storage' in navigator ? navigator.storage : undefined;
}

async function persisted(): Promise<Kept> {
  try {
    const found = await storage()?.persisted();
    return found === undefined ? 'unknown' : found ? 'yes' : 'no';
  } catch {
    return 'unknown';
  }
}
