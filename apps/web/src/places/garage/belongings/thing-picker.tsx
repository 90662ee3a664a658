import { useDeferredValue, useState } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { SearchField } from '../../../look/search-field.tsx';
import { useCatalogue } from './use-catalogue.ts';
import { useFound } from './use-found.ts';

const MOST_SHOWN = 40;

export interface ThingPickerProps {
  readonly label: string;
  /** What is looked for first. */
  readonly start: string;
  readonly onChoose: (id: string) => void;
  /** Said first of all, before anything is typed. */
  readonly offer?: readonly string[];
}

/** Finds a thing of the catalogue by any of its names and chooses it. */
export function ThingPicker({ label, start, onChoose, offer = [] }: ThingPickerProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const catalogue = useCatalogue();
  const [search, setSearch] = useState(start);
  const found = useFound(useDeferredValue(search));
  const ids = search.trim() === '' ? offer : found.ids;
  const items = ids.slice(0, MOST_SHOWN).flatMap((id) => catalogue?.byId.get(id) ?? []);
  return (
    <div className="picker">
      <SearchField label={label} value={search} onChange={setSearch} />
      <ListBox
        className="picker-list"
        aria-label={t('belongings.pickList')}
        items={items}
        onAction={(key) => onChoose(String(key))}
        renderEmptyState={() => (
          <p className="picker-item">
            {t(search.trim() === '' ? 'belongings.pickType' : 'belongings.pickNone')}
          </p>
        )}
      >
        {(line) => (
          <ListBoxItem
            id={line.id}
            className="picker-item"
            textValue={line.size === null ? line.name : `${line.name}, ${line.size}`}
          >
            <span>{line.size === null ? line.name : `${line.name}, ${line.size}`}</span>
            <span className="small quiet keep">{format.mass(line.grams)}</span>
          </ListBoxItem>
        )}
      </ListBox>
      {ids.length > MOST_SHOWN && (
        <p className="small quiet">{t('belongings.pickMore', { count: ids.length - MOST_SHOWN })}</p>
      )}
    </div>
  );
}
