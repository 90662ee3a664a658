import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { TextField } from '../../../look/field.tsx';
import { Block } from '../../../look/parts.tsx';
import type { KeptGarage } from '../../../record/garages.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { DeleteGarage } from './delete-garage.tsx';
import { GarageLine } from './garage-line.tsx';
import { useShelf } from './use-shelf.ts';
import './shelf.css';

/** Every garage this browser keeps: open another, name it, keep a copy of it, delete it, begin a new one. */
export function ShelfBlock() {
  const { t } = useTranslation();
  const { saved } = useRecord();
  const { garages, said, ...acts } = useShelf();
  const [name, setName] = useState('');
  const [deleting, setDeleting] = useState<KeptGarage | null>(null);
  const isWritten = saved === 'saved';
  return (
    <Block title={t('shelf.title')}>
      <p className="prose quiet">{t('shelf.what')}</p>
      {garages === null ? (
        <p className="quiet">{t('shelf.reading')}</p>
      ) : (
        <ul className="rows shelf" aria-label={t('shelf.title')}>
          {garages.map((kept) => (
            <GarageLine
              key={kept.key}
              kept={kept}
              isWritten={isWritten}
              onRename={(next) => void acts.rename(kept, next)}
              onCopy={() => void acts.copy(kept)}
              onDelete={() => setDeleting(kept)}
            />
          ))}
        </ul>
      )}
      <p role="status" className="shelf-said">
        {isWritten ? said : t('shelf.waits')}
      </p>
      <div className="shelf-new">
        <TextField label={t('shelf.newName')} hint={t('shelf.newHint')} value={name} onChange={setName} />
        <Button
          isDisabled={name.trim() === '' || !isWritten}
          onPress={() => void acts.make(name.trim().slice(0, 200))}
        >
          {t('shelf.make')}
        </Button>
      </div>
      {deleting !== null && (
        <DeleteGarage
          kept={garages?.find(({ key }) => key === deleting.key) ?? deleting}
          onCopy={acts.copy}
          onDelete={acts.remove}
          onClose={() => setDeleting(null)}
        />
      )}
    </Block>
  );
}
