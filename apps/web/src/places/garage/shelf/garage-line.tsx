import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import type { KeptGarage } from '../../../record/garages.ts';
import { useStores } from '../../../shell/stores.tsx';
import { isEmpty, ownedPieces } from '../begin/the-way.ts';
import { useGarageName } from './use-garage-name.ts';

const WHEN = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** One garage of this browser, with what may be done to it. */
export function GarageLine({
  kept,
  isWritten,
  onRename,
  onCopy,
  onDelete,
}: {
  kept: KeptGarage;
  /** Nothing of the open garage waits to be written. */
  isWritten: boolean;
  onRename: (name: string) => void;
  onCopy: () => void;
  onDelete: () => void;
}) {
  const { t } = useTranslation();
  const { shelf } = useStores();
  const [isNaming, setNaming] = useState(false);
  const { garage, steps, copiedSteps, lastAt } = kept;
  const name = useGarageName(kept);
  const isOpen = kept.key === shelf.openKey;
  const left = Math.max(0, steps - copiedSteps);
  return (
    <li className="shelf-line">
      <div className="shelf-words">
        <p className={isOpen ? 'decides' : ''}>
          {name}
          {isOpen && <span className="small quiet shelf-open">{t('shelf.openHere')}</span>}
        </p>
        <p className="small quiet">
          {isEmpty(garage)
            ? t('shelf.empty')
            : t('shelf.holds', {
                vehicles: Object.keys(garage.vehicles).length,
                pieces: ownedPieces(garage),
                trips: Object.keys(garage.trips).length,
              })}
          {lastAt !== null && `; ${t('shelf.last', { when: WHEN.format(new Date(lastAt)) })}`}
          {steps > 0 && `; ${left === 0 ? t('shelf.copied') : t('shelf.notCopied', { count: left })}`}
        </p>
      </div>
      {isNaming && (
        <SettledTextField
          label={t('shelf.name')}
          value={garage.name}
          onSettle={(next) => {
            setNaming(false);
            if (next !== '') onRename(next);
          }}
        />
      )}
      <div className="acts">
        {!isOpen && (
          <Button
            label={t('shelf.openNamed', { name })}
            isDisabled={!isWritten}
            onPress={() => shelf.open(kept.key)}
          >
            {t('shelf.open')}
          </Button>
        )}
        <Button label={t('shelf.renameNamed', { name })} onPress={() => setNaming(!isNaming)}>
          {t('shelf.rename')}
        </Button>
        <Button label={t('shelf.copyNamed', { name })} onPress={onCopy}>
          {t('shelf.copy')}
        </Button>
        <Button label={t('shelf.deleteNamed', { name })} onPress={onDelete}>
          {t('shelf.delete')}
        </Button>
      </div>
    </li>
  );
}
