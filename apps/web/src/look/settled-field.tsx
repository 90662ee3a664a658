import { useState } from 'react';
import { Input, Label, Text, TextArea, TextField } from 'react-aria-components';
import './field.css';

export interface SettledTextFieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  /** Called once the owner leaves the field or presses Enter, and only when it has changed. */
  readonly onSettle: (value: string) => void;
  readonly lines?: number;
  readonly longest?: number;
}

/** A text that is recorded when it is finished, so that a name is one step of undo and not one for each letter. */
export function SettledTextField({
  label,
  hint,
  value,
  onSettle,
  lines = 1,
  longest = 200,
}: SettledTextFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const settle = () => {
    const next = typed?.trim().slice(0, longest) ?? value;
    setTyped(null);
    if (next !== value) onSettle(next);
  };
  return (
    <TextField
      className="field"
      value={typed ?? value}
      onChange={setTyped}
      onBlur={settle}
      maxLength={longest}
    >
      <Label>{label}</Label>
      {lines > 1 ? (
        <TextArea className="field-input" rows={lines} />
      ) : (
        <Input
          className="field-input"
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
          }}
        />
      )}
      {hint !== undefined && (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
    </TextField>
  );
}
