import { Button, Input, Label, SearchField as AriaSearchField } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import './field.css';
import './search-field.css';

export interface SearchFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** Looks while one types; Escape or the cross empties it. */
export function SearchField({ label, value, onChange }: SearchFieldProps) {
  const { t } = useTranslation();
  return (
    <AriaSearchField className="field search-field" value={value} onChange={onChange}>
      <Label>{label}</Label>
      <div className="search-line">
        <Input className="field-input" autoComplete="off" spellCheck={false} />
        {value !== '' && (
          <Button className="search-clear" aria-label={t('belongings.clearSearch')}>
            <svg aria-hidden="true" width="14" height="14" viewBox="0 0 14 14">
              <path d="M1 1L13 13M13 1L1 13" fill="none" stroke="currentColor" strokeWidth="2" />
            </svg>
          </Button>
        )}
      </div>
    </AriaSearchField>
  );
}
