import { recordReading } from '@waymend/garage/road/odometer';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { More } from '../../../look/more.tsx';
import { Block } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { MOST_KM } from './most-km.ts';
import { useAct } from './use-act.ts';

/** What the odometer shows now: kept as a reading, and what every act below is recorded at. */
export function OdometerBlock({
  vehicle,
  km,
  onKm,
  day,
}: {
  vehicle: string;
  km: number | null;
  onKm: (km: number | null) => void;
  day: string;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const unit = useFieldUnit('distance');
  const { refusal, act } = useAct();
  const [oldKm, setOldKm] = useState<number | null>(null);
  const [kept, setKept] = useState<string | null>(null);
  const keep = () => {
    if (km === null) return;
    const taken = { id: freshId('reading'), vehicle, km, on: day, ...(oldKm === null ? {} : { oldKm }) };
    const distance = format.distance(km);
    const taking = act(t('jobs.repairs.readingTitle', { distance }), (g) => recordReading(g, taken));
    setKept(taking ? t('jobs.repairs.readingKept', { distance }) : null);
    if (taking) setOldKm(null);
  };
  return (
    <Block title={t('jobs.repairs.odometer')}>
      <div className="odometer">
        <QuantityField
          label={t('jobs.repairs.shows')}
          unit={unit}
          value={km}
          onChange={onKm}
          least={0}
          most={MOST_KM}
        />
        <Button onPress={keep} isDisabled={km === null}>
          {t('jobs.repairs.keepReading')}
        </Button>
      </div>
      {refusal !== null && (
        <p role="alert" className="decides prose">
          {refusal}
        </p>
      )}
      {refusal === null && kept !== null && <p role="status">{kept}</p>}
      <More title={t('jobs.repairs.replaced')}>
        <QuantityField
          label={t('jobs.repairs.oldShowed')}
          hint={t('jobs.repairs.oldHint')}
          unit={unit}
          value={oldKm}
          onChange={setOldKm}
          least={0}
          most={MOST_KM}
        />
      </More>
    </Block>
  );
}
