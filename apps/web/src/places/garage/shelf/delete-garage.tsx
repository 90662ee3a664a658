import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { Sentence } from '../../../look/parts.tsx';
import type { KeptGarage } from '../../../record/garages.ts';
import { useGarageName } from './use-garage-name.ts';

/** Asks before a garage goes for good, and says what of it is nowhere else. */
export function DeleteGarage({
  kept,
  onCopy,
  onDelete,
  onClose,
}: {
  kept: KeptGarage;
  onCopy: (kept: KeptGarage) => Promise<void>;
  onDelete: (kept: KeptGarage) => Promise<void>;
  onClose: () => void;
}) {
  const { t } = useTranslation();
  const name = useGarageName(kept);
  const left = Math.max(0, kept.steps - kept.copiedSteps);
  return (
    <Dialog title={t('shelf.deleteTitle', { name })} isOpen onClose={onClose}>
      <div className="block">
        <div role="status">
          <Sentence strong>
            {left === 0 ? t('shelf.deleteCopied') : t('shelf.deleteNotCopied', { count: left })}
          </Sentence>
        </div>
        <Sentence>{t('shelf.deleteWhat')}</Sentence>
        <div className="acts">
          {left > 0 && (
            <Button main label={t('shelf.copyNamed', { name })} onPress={() => void onCopy(kept)}>
              {t('shelf.copy')}
            </Button>
          )}
          <Button
            onPress={() => {
              onClose();
              void onDelete(kept);
            }}
          >
            {t('shelf.deleteYes', { name })}
          </Button>
          <Button onPress={onClose}>{t('shelf.deleteNo')}</Button>
        </div>
      </div>
    </Dialog>
  );
}
