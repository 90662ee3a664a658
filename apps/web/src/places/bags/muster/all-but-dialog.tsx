import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import type { MusterRow } from './groups.ts';

export interface AllButProps {
  /** What is still out. */
  readonly rows: readonly MusterRow[];
  readonly onDone: (except: readonly string[]) => void;
  readonly onClose: () => void;
}

/** Everything is back but what is ticked here: for a count that went well. */
export function AllButDialog({ rows, onDone, onClose }: AllButProps) {
  const { t } = useTranslation();
  const [except, setExcept] = useState<readonly string[]>([]);
  return (
    <Dialog title={t('bags.muster.allBut')} isOpen onClose={onClose}>
      <div className="all-but">
        <p className="quiet">{t('bags.muster.allButWords')}</p>
        {rows.map(({ id, belonging, name }) => (
          <Check
            key={id}
            isOn={except.includes(belonging)}
            onChange={(isOn) =>
              setExcept(isOn ? [...except, belonging] : except.filter((one) => one !== belonging))
            }
          >
            {name}
          </Check>
        ))}
        <div className="all-but-foot">
          <Button main onPress={() => onDone(except)}>
            {except.length === 0
              ? t('bags.muster.everythingBack')
              : t('bags.muster.allButThese', { count: except.length })}
          </Button>
        </div>
      </div>
    </Dialog>
  );
}
