import { useTranslation } from 'react-i18next';
import { Button } from 'react-aria-components';
import type { Key } from './reading.ts';

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

/** A pad of our own: large keys, no system keyboard that covers what it changes. */
export function NumberPad({ tenths, onKey }: { tenths: boolean; onKey: (key: Key) => void }) {
  const { t } = useTranslation();
  const key = (name: Key, label: string, words?: string) => (
    <Button
      key={name}
      className="pad-key"
      onPress={() => onKey(name)}
      {...(words === undefined ? {} : { 'aria-label': words })}
    >
      {label}
    </Button>
  );
  return (
    <div className="pad" role="group" aria-label={t('belongings.pad')}>
      {DIGITS.map((digit) => key(digit, digit))}
      {tenths ? key('.', '.', t('belongings.point')) : <span />}
      {key('0', '0')}
      {key('back', t('belongings.padBack'), t('belongings.padBackWords'))}
    </div>
  );
}
