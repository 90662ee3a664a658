import { Button } from 'react-aria-components';
import { useTranslation } from 'react-i18next';

/** Our own pad: big keys for one gloved hand, and no keyboard of the system's to cover the page. */
export function NumberPad({
  value,
  onChange,
  fraction,
}: {
  value: string;
  onChange: (value: string) => void;
  /** Inches: a stroke and a dash instead of the point. */
  fraction: boolean;
}) {
  const { t } = useTranslation();
  const add = (key: string) => onChange(`${value}${key}`.slice(0, 8));
  const row = (keys: readonly string[]) =>
    keys.map((key) => (
      <Button key={key} className="pad-key" onPress={() => add(key)}>
        {key}
      </Button>
    ));
  return (
    <div className="pad" role="group" aria-label={t('walk.pad')}>
      {row(['1', '2', '3'])}
      <Button className="pad-key" onPress={() => onChange(value.slice(0, -1))} aria-label={t('walk.back')}>
        <BackSign />
      </Button>
      {row(['4', '5', '6', fraction ? '/' : '.', '7', '8', '9', '0'])}
      {/* For sizes above one inch: 1-1/8. */}
      {fraction && row(['-'])}
    </div>
  );
}

function BackSign() {
  return (
    <svg aria-hidden="true" width="28" height="20" viewBox="0 0 28 20">
      <path
        d="M10 2H26V18H10L2 10ZM13 6L21 14M21 6L13 14"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
      />
    </svg>
  );
}
