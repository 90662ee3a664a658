import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { OneOf } from '../../../look/one-of.tsx';
import { Block } from '../../../look/parts.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { useRecord } from '../../../shell/stores.tsx';

/** What the garage is called, and in what its numbers are read. */
export function Naming() {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const [odd, setOdd] = useState<string | null>(null);
  const currency = (text: string): void => {
    const code = text.toUpperCase();
    if (!/^[A-Z]{3}$/.test(code)) {
      setOdd(code);
      return;
    }
    setOdd(null);
    void edit(t('record.stepCurrency', { code }), (before) => ({ ...before, currency: code }));
  };
  return (
    <Block title={t('record.naming')}>
      <SettledTextField
        label={t('record.name')}
        value={garage.name}
        onSettle={(name) => void edit(t('record.stepName', { name }), (before) => ({ ...before, name }))}
      />
      <OneOf
        label={t('record.units')}
        across
        value={garage.units}
        onChange={(units) => void edit(t('record.stepUnits'), (before) => ({ ...before, units }))}
        options={[
          { id: 'metric', label: t('record.metric') },
          { id: 'inch', label: t('record.inch') },
        ]}
      />
      <SettledTextField
        label={t('record.currency')}
        hint={t('record.currencyHint')}
        longest={3}
        value={garage.currency}
        onSettle={currency}
      />
      {odd !== null && (
        <p role="alert" className="decides">
          {t('record.currencyOdd', { code: odd })}
        </p>
      )}
    </Block>
  );
}
