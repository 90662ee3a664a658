import { useTranslation } from 'react-i18next';
import type { Margin } from '@waymend/planner/answer/plan-answer';
import type { LoadView } from '@waymend/planner/views/load-view';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { LimitBar } from '../../../look/limit-bar.tsx';
import { ofLimit, verdict } from './words.ts';

/** Every limit of the vehicle with its room, in words and as a bar. */
export function LimitList({ view }: { view: LoadView }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { load } = view;
  const lines: readonly (readonly [string, Margin | null])[] = [
    [t('load.front'), load.front],
    [t('load.rear'), load.rear],
    [t('load.gross'), load.gross],
    [t('load.roof'), load.roof],
    [t('load.frontTyres'), load.tyres?.front ?? null],
    [t('load.rearTyres'), load.tyres?.rear ?? null],
  ];
  return (
    <Block title={t('load.limits')} aside={view.weighed ? t('load.weighed') : t('load.notWeighed')}>
      <div className="limit-list">
        {lines.map(([title, margin]) =>
          margin === null ? null : (
            <LimitBar
              key={title}
              title={title}
              verdict={verdict(margin.marginKg, t, format)}
              detail={ofLimit(margin.kg, margin.limitKg, t, format)}
              value={margin.kg}
              limit={margin.limitKg}
            />
          ),
        )}
      </div>
    </Block>
  );
}
