import { useTranslation } from 'react-i18next';
import { Choice } from '../../../../look/field.tsx';
import { useFormat } from '../../../../format/use-format.ts';
import { SearchField } from '../../../../look/search-field.tsx';
import { ORDERS, SHOWN } from '../choose-rows.ts';
import type { Sifting } from './use-sifting.ts';

export interface SiftProps {
  readonly sifting: Sifting;
  readonly onChange: (fields: Partial<Sifting>) => void;
  readonly count: number;
}

/** Search, what to show, and in which order. */
export function Sift({ sifting, onChange, count }: SiftProps) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <search className="sift">
      <SearchField
        label={t('belongings.search')}
        value={sifting.search}
        onChange={(search) => onChange({ search })}
      />
      <Choice
        label={t('belongings.shown')}
        value={sifting.shown}
        onChange={(shown) => onChange({ shown })}
        options={SHOWN.map((id) => ({ id, label: t(`belongings.shown_${id}`) }))}
      />
      <Choice
        label={t('belongings.order')}
        value={sifting.order}
        onChange={(order) => onChange({ order })}
        options={ORDERS.map((id) => ({ id, label: t(`belongings.order_${id}`) }))}
      />
      <p className="sift-count small quiet" role="status">
        {t('belongings.rows', { count, number: format.count(count) })}
      </p>
    </search>
  );
}
