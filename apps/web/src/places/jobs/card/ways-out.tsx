import type { ExpedientCard, JobCard } from '@waymend/planner/answer/card-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { GradeMark, markOf } from '../../../look/grade-mark.tsx';
import { More } from '../../../look/more.tsx';
import { Block } from '../../../look/parts.tsx';

/** The weaker ways through the same trouble: how far, how fast, whether that reaches help, and what each takes. */
export function WaysOut({ card }: { card: JobCard }) {
  const { t } = useTranslation();
  if (card.expedients.length === 0) return null;
  return (
    <Block title={t('jobs.card.otherwise')} aside={t('jobs.card.otherwiseAside')}>
      <ul className="ways-out">
        {card.expedients.map((way) => (
          <Way key={way.id} way={way} helpKm={card.help.km} />
        ))}
      </ul>
    </Block>
  );
}

function Way({ way, helpKm }: { way: ExpedientCard; helpKm: number }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { possible, grade, trustedKm, reachesHelp, speedKmh, lookAgainKm, missing, steps, limits } = way;
  const reach =
    trustedKm === null
      ? t('jobs.card.toTheEnd')
      : trustedKm === 0
        ? t('jobs.card.goesNowhere')
        : t(reachesHelp ? 'jobs.card.reaches' : 'jobs.card.reachesNot', {
            distance: format.distance(trustedKm),
            help: format.distance(helpKm),
          });
  const more = [
    ...(speedKmh === null ? [] : [t('jobs.card.atMost', { distance: format.distance(speedKmh) })]),
    ...(lookAgainKm === null ? [] : [t('jobs.card.lookEvery', { distance: format.distance(lookAgainKm) })]),
  ];
  return (
    <li className="way-out">
      <div className="piece">
        <GradeMark mark={possible ? markOf(grade) : 'missing'} />
        <span className="piece-what">
          <b>{way.title}</b>
          <span>{[reach, ...more].join(' ')}</span>
          {missing.length > 0 && (
            <span className="small">{t('jobs.card.wayMissing', { what: missing.join('; ') })}</span>
          )}
          <span className="small">{limits}</span>
        </span>
      </div>
      <More title={t('jobs.card.wayHow', { count: steps.length })}>
        {way.with.length > 0 && (
          <p className="small">
            {t('jobs.card.wayWith', { pieces: way.with.map((p) => p.name).join('; ') })}
          </p>
        )}
        <ol className="way-steps">
          {steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </More>
    </li>
  );
}
