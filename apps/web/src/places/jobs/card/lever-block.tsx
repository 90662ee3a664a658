import type { JobCard } from '@waymend/planner/answer/card-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { LeverFigure } from './lever-figure.tsx';
import { leverRows } from './levers.ts';

/** How hard to pull, and where: the hardest nut as a drawing, the others in a line each. */
export function LeverBlock({ card }: { card: Pick<JobCard, 'needs' | 'torques'> }) {
  const { t } = useTranslation();
  const format = useFormat();
  const rows = leverRows(card);
  const [hardest] = rows.filter(({ pull }) => pull.how !== 'strike');
  if (rows.length === 0) return null;
  const others = rows.filter((row) => row !== hardest);
  return (
    <Block
      title={t('jobs.card.lever')}
      aside={hardest === undefined ? undefined : format.length(hardest.pull.leverMm)}
    >
      {hardest !== undefined && <LeverFigure row={hardest} />}
      {others.length > 0 && (
        <ul className="card-rows">
          {others.map(({ what, pull }) => (
            <li key={what}>
              <b>{what}.</b> {pull.words}
            </li>
          ))}
        </ul>
      )}
      <p className="small">{t('jobs.card.pullNever')}</p>
    </Block>
  );
}
