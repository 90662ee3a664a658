import { useTranslation } from 'react-i18next';
import { Dialog } from '../../../../look/dialog.tsx';
import { Sentence } from '../../../../look/parts.tsx';
import type { Rows } from '../use-rows.ts';
import { useRowWords } from '../list/use-row-words.ts';
import { SetCarry, SetPieces } from './set-part.tsx';
import { ThingActs } from './thing-acts.tsx';
import { ThingFields } from './thing-fields.tsx';
import './thing-sheet.css';

export interface ThingSheetProps {
  readonly id: string;
  readonly found: Rows;
  readonly onClose: () => void;
}

/** One belonging laid open over the list: where it is on this trip, and everything recorded of it. */
export function ThingSheet({ id, found, onClose }: ThingSheetProps) {
  const { t } = useTranslation();
  const words = useRowWords();
  const row = found.rows.find((one) => one.id === id);
  if (row === undefined) {
    return (
      <Dialog title={t('belongings.goneTitle')} isOpen onClose={onClose}>
        <Sentence>{t('belongings.gone')}</Sentence>
      </Dialog>
    );
  }
  const standing = found.standings(id, row.belonging);
  const { name, size, said, where } = words.of(row, standing);
  return (
    <Dialog title={size === '' ? name : `${name}, ${size}`} isOpen onClose={onClose}>
      <div className="thing-sheet">
        <Sentence>{[said, where].filter((part) => part !== '').join(', ')}</Sentence>
        {row.contents !== null && <SetCarry row={row} />}
        <ThingFields key={id} row={row} />
        <ThingActs row={row} onGone={onClose} />
        {row.contents !== null && <SetPieces row={row} found={found} />}
      </div>
    </Dialog>
  );
}
