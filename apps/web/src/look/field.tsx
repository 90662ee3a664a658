import type { ReactNode } from 'react';
import {
  FieldError,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  NumberField as AriaNumberField,
  Popover,
  Button,
  Select,
  SelectValue,
  Text,
  TextArea,
  TextField as AriaTextField,
} from 'react-aria-components';
import './field.css';

interface Common {
  readonly label: string;
  /** One line under the field: what it is for, or where to read it off. */
  readonly hint?: string;
  /** A sentence when what stands here cannot be used. */
  readonly error?: string | null;
}

export interface NumberFieldProps extends Common {
  /** Null while nothing has been entered. */
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly unit?: string;
  readonly least?: number;
  readonly most?: number;
  readonly digits?: number;
}

/** A number with its unit beside it; a phone shows the number pad. */
export function NumberField({
  label,
  hint,
  error,
  value,
  onChange,
  unit,
  least,
  most,
  digits = 0,
}: NumberFieldProps) {
  return (
    <AriaNumberField
      className="field"
      value={value ?? Number.NaN}
      onChange={(next) => onChange(Number.isNaN(next) ? null : next)}
      formatOptions={{ maximumFractionDigits: digits }}
      isInvalid={error !== null && error !== undefined}
      isWheelDisabled
      {...(least === undefined ? {} : { minValue: least })}
      {...(most === undefined ? {} : { maxValue: most })}
    >
      <Label>{label}</Label>
      <div className="field-line">
        <Input className="field-input number" />
        {unit !== undefined && <span className="field-unit">{unit}</span>}
      </div>
      <Below hint={hint} error={error} />
    </AriaNumberField>
  );
}

export interface TextFieldProps extends Common {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly lines?: number;
  readonly mono?: boolean;
}

export function TextField({ label, hint, error, value, onChange, lines = 1, mono = false }: TextFieldProps) {
  const className = mono ? 'field-input mono' : 'field-input';
  return (
    <AriaTextField
      className="field"
      value={value}
      onChange={onChange}
      isInvalid={error !== null && error !== undefined}
    >
      <Label>{label}</Label>
      {lines > 1 ? <TextArea className={className} rows={lines} /> : <Input className={className} />}
      <Below hint={hint} error={error} />
    </AriaTextField>
  );
}

export interface ChoiceProps<K extends string> extends Common {
  readonly value: K;
  readonly onChange: (value: K) => void;
  readonly options: readonly { readonly id: K; readonly label: string }[];
}

/** One of a few: a list that opens. */
export function Choice<K extends string>({ label, hint, error, value, onChange, options }: ChoiceProps<K>) {
  return (
    <Select
      className="field"
      value={value}
      onChange={(key) => {
        const found = options.find(({ id }) => id === key);
        if (found) onChange(found.id);
      }}
    >
      <Label>{label}</Label>
      <Button className="field-input choice">
        <SelectValue className="choice-value" />
        <svg aria-hidden="true" width="14" height="8" viewBox="0 0 14 8">
          <path d="M1 1L7 7L13 1" fill="none" stroke="currentColor" strokeWidth="2" />
        </svg>
      </Button>
      <Below hint={hint} error={error} />
      <Popover className="choice-list" offset={2}>
        <ListBox items={options}>
          {(option) => (
            <ListBoxItem id={option.id} className="choice-item" textValue={option.label}>
              {option.label}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}

function Below({ hint, error }: { hint: string | undefined; error: string | null | undefined }): ReactNode {
  if (error !== null && error !== undefined) return <FieldError className="field-error">{error}</FieldError>;
  if (hint !== undefined)
    return (
      <Text slot="description" className="field-hint">
        {hint}
      </Text>
    );
  return null;
}
