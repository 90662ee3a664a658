import { memo, useMemo } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { totalsOf } from '../totals.ts';
import type { Rows } from '../use-rows.ts';

/** The answer of the sheet in a sentence or two: how much there is, how much comes, how much of it is a guess. */
export const ListHead = memo(function ListHead({ found }: { found: Rows | null }) {
  const { t } = useTranslation();
  const format = useFormat();
  const totals = useMemo(() => (found === null ? null : totalsOf(found.rows)), [found]);
  if (found === null || totals === null) {
    return (
      <div className="list-head">
        <h1>{t('belongings.title')}</h1>
        <p className="quiet">{t('belongings.opening')}</p>
      </div>
    );
  }
  const { things, grams, estimated, noMass } = totals;
  const number = format.count(things);
  const sentences = [
    found.kitGrams === null ? null : t('belongings.headAlong', { mass: format.mass(found.kitGrams) }),
    grams === 0
      ? null
      : estimated === 0
        ? t('belongings.headWeighed')
        : t('belongings.headEstimated', { mass: format.mass(estimated) }),
    noMass === 0 ? null : t('belongings.headNoMass', { count: noMass }),
  ];
  return (
    <div className="list-head">
      <h1>
        {things === 0
          ? t('belongings.headNone')
          : t('belongings.head', { count: things, number, mass: format.mass(grams) })}
      </h1>
      <p className="quiet">
        {sentences.filter((one) => one !== null).join(' ')}
        {found.kitGrams !== null && !found.fresh ? ` ${t('belongings.replanning')}` : ''}
      </p>
    </div>
  );
});
