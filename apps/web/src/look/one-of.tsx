import { Label, RadioButton, RadioField, RadioGroup, Text } from 'react-aria-components';
import './one-of.css';

export interface OneOfProps<K extends string> {
  readonly label: string;
  readonly hint?: string;
  readonly value: K;
  readonly onChange: (value: K) => void;
  readonly options: readonly { readonly id: K; readonly label: string; readonly remark?: string }[];
  /** Side by side where there is room; below each other otherwise. */
  readonly across?: boolean;
}

/** One of a few, all of them in sight. */
export function OneOf<K extends string>({
  label,
  hint,
  value,
  onChange,
  options,
  across = false,
}: OneOfProps<K>) {
  return (
    <RadioGroup
      className="one-of"
      value={value}
      onChange={(next) => {
        const found = options.find(({ id }) => id === next);
        if (found) onChange(found.id);
      }}
      orientation={across ? 'horizontal' : 'vertical'}
    >
      <Label>{label}</Label>
      <div className={across ? 'one-of-list across' : 'one-of-list'}>
        {options.map(({ id, label: words, remark }) => (
          <RadioField key={id} value={id} className="one-of-field">
            <RadioButton className="one-of-item">
              <span className="one-of-mark" aria-hidden="true" />
              <span>
                <span className="one-of-words">{words}</span>
                {remark !== undefined && <span className="small quiet one-of-remark">{remark}</span>}
              </span>
            </RadioButton>
          </RadioField>
        ))}
      </div>
      {hint !== undefined && (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
    </RadioGroup>
  );
}
