import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';

export interface StepperProps {
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly onChange: (value: number) => void;
}

/** A count with one fewer and one more beside it: two big presses, and no keyboard that lights up the night. */
export function Stepper({ label, value, step, onChange }: StepperProps) {
  const { t } = useTranslation();
  return (
    <div className="stepper" role="group" aria-label={label}>
      <span className="stepper-name">{label}</span>
      <Button
        label={t('bags.muster.fewer', { what: label })}
        isDisabled={value <= 0}
        onPress={() => onChange(Math.max(0, value - step))}
      >
        <svg aria-hidden="true" width="16" height="16" viewBox="0 0 16 16">
          <path d="M2 8H14" stroke="currentColor" strokeWidth="2" />
        </svg>
      </Button>
      <output className="stepper-value">{value}</output>
      <Button label={t('bags.muster.more', { what: label })} onPress={() => onChange(value + step)}>
        <svg aria-hidden="true" width="16" height="16" viewBox="0 0 16 16">
          <path d="M2 8H14M8 2V14" stroke="currentColor" strokeWidth="2" />
        </svg>
      </Button>
    </div>
  );
}
