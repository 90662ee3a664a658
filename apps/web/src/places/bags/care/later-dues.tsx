import type { DueAnswer } from '@waymend/planner/answer/ready-answer';
import { useTranslation } from 'react-i18next';
import { dayWords } from '../../../format/day-words.ts';
import { More } from '../../../look/more.tsx';

const LATER: ReadonlySet<DueAnswer['when']> = new Set(['after-trip', 'later', 'unknown']);

/** What care asks for after the trip or some day, folded away. */
export function LaterDues({ dues }: { dues: readonly DueAnswer[] }) {
  const { t } = useTranslation();
  const later = dues
    .filter(({ when }) => LATER.has(when))
    .sort((a, b) => ((a.on ?? '9') < (b.on ?? '9') ? -1 : 1));
  if (later.length === 0) return null;
  return (
    <More title={t('bags.care.later')} summary={t('bags.care.laterCount', { count: later.length })}>
      <ul className="plain-rows">
        {later.map((due) => (
          <li key={`${due.thing} ${due.rule} ${due.kind}`}>
            <span className="decides">{due.on === null ? t('bags.care.noDay') : dayWords(due.on)}</span>{' '}
            {due.name}: {due.words}. <span className="small quiet">{due.basis}</span>
          </li>
        ))}
      </ul>
    </More>
  );
}
