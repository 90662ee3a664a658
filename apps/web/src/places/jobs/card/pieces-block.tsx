import type { JobCard, WayCard } from '@waymend/planner/answer/card-answer';
import { useTranslation } from 'react-i18next';
import { GradeMark, markOf } from '../../../look/grade-mark.tsx';
import { More } from '../../../look/more.tsx';
import { Block } from '../../../look/parts.tsx';
import { SquareMark } from '../../../look/square-mark.tsx';
import { pieceRows } from './pieces.ts';

/** The pieces of the best ways and where each is, what is missing, and what else here would do. */
export function PiecesBlock({ card }: { card: JobCard }) {
  const { t } = useTranslation();
  const rows = pieceRows(card.needs);
  const missing = card.needs.filter(({ best }) => best === null);
  const others = card.needs.filter((need) => need.best !== null && need.others.length > 0);
  if (card.needs.length + card.uses.length + card.helps.length === 0) return null;
  return (
    <Block title={t('jobs.card.pieces')} aside={t('jobs.card.piecesAside', { count: rows.length })}>
      <ul className="card-rows">
        {missing.map(({ what, wanted }) => (
          <li key={what} className="piece">
            <GradeMark mark="missing" />
            <span className="piece-what">
              <b>{t('jobs.card.missing', { what })}</b>
              <span className="small">
                {wanted.length === 0
                  ? t('jobs.card.nothingDoes')
                  : t('jobs.card.wouldDo', { ways: wanted.join('; ') })}
              </span>
            </span>
          </li>
        ))}
        {rows.map(({ piece, grade, for: purposes }) => (
          <li key={`${piece.id} ${piece.name}`} className="piece">
            <GradeMark mark={markOf(grade)} />
            <span className="piece-what">
              <span>{piece.name}</span>
              <span className="small quiet">
                {purposes[0]}
                {purposes.length > 1 && ` ${t('jobs.card.andMore', { count: purposes.length - 1 })}`}
                {grade !== 'proper' && ` (${t(`why.grade.${grade}`)})`}
              </span>
            </span>
            <span className="piece-where small">{t('jobs.card.where', { where: piece.where })}</span>
          </li>
        ))}
        {card.uses.map(({ of, name, each, aboard, left }) => (
          <li key={of} className="piece">
            <SquareMark fill={left === null ? 'hatched' : 'solid'} />
            <span className="piece-what">
              <span className={left === null ? 'decides' : ''}>{name}</span>
              <span className="small quiet">{t('jobs.card.uses', { each, aboard })}</span>
            </span>
          </li>
        ))}
        {card.helps.map(({ what, with: piece }) => (
          <li key={what} className="piece">
            <SquareMark fill="open" />
            <span className="piece-what">
              <span>{piece.name}</span>
              <span className="small quiet">{t('jobs.card.helps', { what })}</span>
            </span>
            <span className="piece-where small">{t('jobs.card.where', { where: piece.where })}</span>
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <More title={t('jobs.card.otherWays')}>
          <dl className="other-ways">
            {others.map(({ what, others: ways }) => (
              <div key={what}>
                <dt>{what}</dt>
                {ways.map((way) => (
                  <dd key={namesOf(way)} className="other-way">
                    <GradeMark mark={markOf(way.grade)} />
                    <span>
                      {namesOf(way)} <span className="small quiet">{t(`why.grade.${way.grade}`)}</span>
                    </span>
                  </dd>
                ))}
              </div>
            ))}
          </dl>
        </More>
      )}
    </Block>
  );
}

function namesOf({ pieces }: WayCard): string {
  return pieces.map(({ name }) => name).join(' + ');
}
