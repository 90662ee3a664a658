import { useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import type { FieldUnit } from '../format/field-units.ts';
import './field.css';

export interface QuantityFieldProps {
  readonly label: string;
  /** One line under the field: what it is for, or where to read it off. */
  readonly hint?: string;
  readonly unit: FieldUnit;
  /** As recorded, in metric; null while there is none. */
  readonly value: number | null;
  /** As recorded; called once the owner leaves the field or presses Enter, and only when it has changed. */
  readonly onChange: (value: number | null) => void;
  /** Limits in what is recorded. */
  readonly least?: number;
  readonly most?: number;
}

/**
 * A quantity in the unit the owner chose, which stands beside it; one typed with a unit of its own ('2.9 m', '6400 lb') is
 * converted. What cannot be read stays as it was typed, with a sentence below, until it is mended; Escape brings back what is recorded.
 */
export function QuantityField({ label, hint, unit, value, onChange, least, most }: QuantityFieldProps) {
  const { t } = useTranslation();
  const [typed, setTyped] = useState<string | null>(null);
  const [error, setError] = useState<string | null>(null);
  const shown = unit.show(value);
  const recorded = shown === null ? '' : String(shown);
  const edge = (at: number) => `${unit.show(at) ?? at} ${t(unit.name)}`;
  const forget = () => {
    setTyped(null);
    setError(null);
  };
  const settle = () => {
    // What is shown may be rounded: a field that is only passed through changes nothing.
    if (typed === null || typed.trim() === recorded) {
      forget();
      return;
    }
    const read = unit.readText(typed);
    if (!read.ok) setError(`${read.error.message}.`);
    else if (read.value !== null && least !== undefined && read.value < least)
      setError(t('units.atLeast', { quantity: edge(least) }));
    else if (read.value !== null && most !== undefined && read.value > most)
      setError(t('units.atMost', { quantity: edge(most) }));
    else {
      forget();
      if (read.value !== value) onChange(read.value);
    }
  };
  return (
    <TextField
      className="field"
      value={typed ?? recorded}
      onChange={(text) => {
        setTyped(text);
        setError(null);
      }}
      onBlur={settle}
      isInvalid={error !== null}
      maxLength={40}
    >
      <Label>{label}</Label>
      <div className="field-line">
        <Input
          className="field-input number"
          autoComplete="off"
          // The pad of digits has no minus everywhere.
          inputMode={least !== undefined && least >= 0 ? 'decimal' : 'text'}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'Escape' && typed !== null) {
              event.stopPropagation();
              forget();
            }
          }}
        />
        <span className="field-unit">{t(unit.name)}</span>
      </div>
      {error !== null ? (
        <FieldError className="field-error">{error}</FieldError>
      ) : (
        hint !== undefined && (
          <Text slot="description" className="field-hint">
            {hint}
          </Text>
        )
      )}
    </TextField>
  );
}
