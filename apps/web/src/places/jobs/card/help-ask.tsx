import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Sentence } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import type { Roadside } from '../roadside.ts';

/** A trip without legs has no distance to help: it is asked once, before the card. */
export function HelpAsk({ onSay }: { onSay: (change: Partial<Roadside>) => void }) {
  const { t } = useTranslation();
  const unit = useFieldUnit('distance');
  return (
    <>
      <Sentence>{t('jobs.decide.helpUnknown')}</Sentence>
      <QuantityField
        label={t('jobs.decide.help')}
        unit={unit}
        value={null}
        onChange={(helpKm) => onSay({ helpKm })}
        least={0}
        most={5000}
      />
    </>
  );
}
