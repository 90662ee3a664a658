import type { JobCard } from '@waymend/planner/answer/card-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import type { Mark } from './limits.ts';
import { afterwards } from './limits.ts';

/** What the repair still asks for: before driving on, and after how far, along a road whose scale is broken. */
export function LimitsBlock({ card }: { card: JobCard }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { first, marks } = afterwards(card, t('jobs.card.trustEnds'));
  if (first.length + marks.length === 0) return null;
  return (
    <Block title={t('jobs.card.after')}>
      {marks.length > 0 && <Road marks={marks} now={t('jobs.card.now')} show={format.distance} />}
      <ul className="card-rows">
        {first.map((check) => (
          <li key={check}>
            <b>{t('jobs.card.beforeDriving')}</b> {check}
          </li>
        ))}
        {marks.map(({ km, words }) => (
          <li key={km}>
            <b className="keep">{t('jobs.card.afterKm', { distance: format.distance(km) })}</b>{' '}
            {words.join(' ')}
          </li>
        ))}
      </ul>
    </Block>
  );
}

const WIDTH = 330;
const Y = 34;

function Road({ marks, now, show }: { marks: readonly Mark[]; now: string; show: (km: number) => string }) {
  const step = (WIDTH - 12) / (marks.length + 0.35);
  return (
    <svg viewBox={`0 0 ${WIDTH} 52`} width="100%" aria-hidden="true" className="road">
      <path d={`M6 ${Y}H${WIDTH - 4}`} className="line-wide" />
      <text x="6" y={Y - 12} className="lever-text">
        {now}
      </text>
      {marks.map(({ km, isEnd }, n) => {
        const x = 6 + step * (n + 1);
        const broken = x - step / 2;
        return (
          <g key={km}>
            {/* The scale is broken between any two marks. */}
            <path d={`M${broken - 4} ${Y - 7}h10v14h-10Z`} className="paper" />
            <path d={`M${broken - 5} ${Y + 8}l6 -16M${broken + 1} ${Y + 8}l6 -16`} className="line-wide" />
            <path d={`M${x} ${Y - 10}V${Y + 10}`} className={isEnd ? 'line-limit' : 'line-wide'} />
            {isEnd && <path d={`M${x + 2} ${Y - 3}l6 -6M${x + 2} ${Y + 10}l6 -6`} className="line-narrow" />}
            <text
              x={n === marks.length - 1 ? x + step * 0.35 : x}
              y={Y - 14}
              textAnchor={n === marks.length - 1 ? 'end' : 'middle'}
              className="road-km"
            >
              {show(km)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
