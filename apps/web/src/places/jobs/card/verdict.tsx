import type { JobCard } from '@waymend/planner/answer/card-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { GradeMark, markOf } from '../../../look/grade-mark.tsx';

/** Whether it can be done now, by whom, how long it takes and what it leaves; what stands in the way, each in a sentence. */
export function Verdict({ card }: { card: JobCard }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { people, minutes, outcome, trustedKm } = card;
  const leaves =
    outcome === 'limp' && trustedKm !== null
      ? t('jobs.card.leaves.limpKm', { distance: format.distance(trustedKm) })
      : t(`jobs.card.leaves.${outcome}`);
  return (
    <section className="verdict" aria-label={t('jobs.card.verdict')} role="status">
      <p className="verdict-answer">
        <GradeMark mark={card.now ? markOf(card.grade) : 'missing'} />
        <b>{card.now ? t(`why.can.${card.grade ?? 'proper'}`) : t('jobs.card.cannot')}</b>
      </p>
      {card.why.length > 0 && (
        <ul className="verdict-why">
          {card.why.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <p>
        {t('jobs.card.takes', {
          people: t('jobs.card.people', { count: people.wanted }),
          from: minutes[0],
          to: minutes[1],
          skill: people.skill,
          best: people.bestSkill,
        })}{' '}
        {card.dark && t('jobs.card.darkTime')} {leaves}
      </p>
    </section>
  );
}
