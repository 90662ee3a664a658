import type { SureAnswer, SureItem, WhatIf } from '@waymend/planner/answer/sure-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { few } from './few.ts';

/** What belongs to the best kit whatever the rates are, what does by a hair, and what if all rates are off at once. */
export function AnyWay({ answer }: { answer: SureAnswer }) {
  const { t } = useTranslation();
  const { items, planned, whatIf } = answer;
  const here = (how: SureItem['how']) => items.filter((i) => i.inKit && i.how === how);
  const taste = here('taste');
  return (
    <Block title={t('sure.kit')} aside={t('sure.kitAside', { count: planned })}>
      <p>
        {t('sure.surely', { count: here('sure').length })}{' '}
        {t('sure.likely', { count: here('likely').length })}
      </p>
      {taste.length === 0 ? <p>{t('sure.taste_none')}</p> : <Items title={t('sure.comes')} items={taste} />}
      <Items title={t('sure.stays')} items={items.filter((i) => !i.inKit && i.how !== 'taste')} />
      <h3>{t('sure.whatIf')}</h3>
      <ul>
        {whatIf.map((one) => (
          <Otherwise key={one.times} one={one} />
        ))}
      </ul>
    </Block>
  );
}

function Items({ title, items }: { title: string; items: readonly SureItem[] }) {
  const { t } = useTranslation();
  const format = useFormat();
  if (items.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {items.map(({ id, name, grams, share, owned }) => (
          <li key={id} className="sure-row">
            <span>{name}</span>
            <span>{format.mass(grams)}</span>
            <span className="small quiet">
              {t('sure.inKits', { share: format.percent(share) })}
              {!owned && `, ${t('sure.buy')}`}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

function Otherwise({ one }: { one: WhatIf }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { words, joins, leaves, best } = one;
  const said = { words, chance: format.percent(1 - one.chance), best: format.percent(1 - (best ?? 0)) };
  const changed = joins.length + leaves.length > 0;
  return (
    <li className="sure-row">
      <span>{t(best === null ? 'sure.noKit' : changed ? 'sure.then' : 'sure.same', said)}</span>
      <span />
      {changed && (
        <span className="small quiet">
          {[
            ...(joins.length > 0 ? [t('sure.joins', { names: few(joins, t) })] : []),
            ...(leaves.length > 0 ? [t('sure.leaves', { names: few(leaves, t) })] : []),
          ].join('; ')}
        </span>
      )}
    </li>
  );
}
