import type { CatalogueSet } from '@waymend/planner/views/catalogue-view';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';

/** Boxed sets as shops sell them. */
export function SetList({ sets, onOpen }: { sets: readonly CatalogueSet[]; onOpen: (id: string) => void }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <ul className="set-list">
      {sets.map((set) => (
        <li key={set.id}>
          <button type="button" className="set-row" onClick={() => onOpen(set.id)}>
            <span>
              {set.title}
              <span className="small quiet facts-basis">{set.note}</span>
            </span>
            <span className="set-figures">
              <span className="assumed keep">{format.mass(set.grams)}</span>
              <span className="small quiet keep">
                {t('belongings.about', { price: format.money(set.cents) })}
              </span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
