import { memo } from 'react';
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
      <SiftChoices shown={sifting.shown} order={sifting.order} onChange={onChange} />
      <p className="sift-count small quiet" role="status">
        {t('belongings.rows', { count, number: format.count(count) })}
      </p>
    </search>
  );
}

/** Not drawn anew for a letter of the search. */
const SiftChoices = memo(function SiftChoices({
  shown,
  order,
  onChange,
}: Pick<Sifting, 'shown' | 'order'> & Pick<SiftProps, 'onChange'>) {
  const { t } = useTranslation();
  return (
    <>
      <Choice
        label={t('belongings.shown')}
        value={shown}
        onChange={(next) => onChange({ shown: next })}
        options={SHOWN.map((id) => ({ id, label: t(`belongings.shown_${id}`) }))}
      />
      <Choice
        label={t('belongings.order')}
        value={order}
        onChange={(next) => onChange({ order: next })}
        options={ORDERS.map((id) => ({ id, label: t(`belongings.order_${id}`) }))}
      />
    </>
  );
});
