import type { ReactNode } from 'react';
import { CheckboxButton, CheckboxField } from 'react-aria-components';
import './check.css';

export interface CheckProps {
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
  readonly children: ReactNode;
  readonly isDisabled?: boolean;
  readonly label?: string;
}

/** A square to tick: solid when it holds, outline when it does not. */
export function Check({ isOn, onChange, children, isDisabled = false, label }: CheckProps) {
  return (
    <CheckboxField
      className="check-field"
      isSelected={isOn}
      onChange={onChange}
      isDisabled={isDisabled}
      {...(label === undefined ? {} : { 'aria-label': label })}
    >
      <CheckboxButton className="check">
        <svg className="check-square" aria-hidden="true" width="24" height="24" viewBox="0 0 24 24">
          <rect x="2" y="2" width="20" height="20" fill="none" stroke="var(--hand)" strokeWidth="2" />
          {isOn && <rect x="6" y="6" width="12" height="12" fill="var(--ink)" />}
        </svg>
        <span>{children}</span>
      </CheckboxButton>
    </CheckboxField>
  );
}
