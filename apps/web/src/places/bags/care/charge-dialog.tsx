import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { Stepper } from '../muster/stepper.tsx';

const FULL = 100;
const STEP = 10;

/** Asks how full something was left: what it loses until leaving is counted from there. */
export function ChargeDialog({
  name,
  onDone,
  onClose,
}: {
  name: string;
  onDone: (pct: number) => void;
  onClose: () => void;
}) {
  const { t } = useTranslation();
  const [pct, setPct] = useState(FULL);
  return (
    <Dialog title={name} isOpen onClose={onClose}>
      <div className="fate">
        <p>{t('bags.care.chargeAsk')}</p>
        <Stepper
          label={t('bags.care.chargeLabel')}
          value={pct}
          step={STEP}
          onChange={(next) => setPct(Math.min(FULL, next))}
        />
        <div className="acts">
          <Button main onPress={() => onDone(pct)}>
            {t('bags.care.chargeDone', { pct })}
          </Button>
        </div>
      </div>
    </Dialog>
  );
}
