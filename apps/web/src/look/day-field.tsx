import { Input, Label, Text, TextField } from 'react-aria-components';
import './field.css';

export interface DayFieldProps {
  readonly label: string;
  readonly hint?: string;
  /** '2026-07-04'; empty while none is chosen. */
  readonly value: string;
  readonly onChange: (day: string) => void;
}

/** A day, by the device's own calendar or typed. */
export function DayField({ label, hint, value, onChange }: DayFieldProps) {
  return (
    <TextField className="field" type="date" value={value} onChange={onChange}>
      <Label>{label}</Label>
      <Input className="field-input" />
      {hint !== undefined && (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
    </TextField>
  );
}
