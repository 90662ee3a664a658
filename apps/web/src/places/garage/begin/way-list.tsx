import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import type { Step, StepId } from './the-way.ts';
import { useStepWords } from './use-step-words.ts';

/** The sheet of each step. */
export const WHERE: Readonly<Record<StepId, string>> = {
  vehicle: '/vehicle',
  belongings: '/garage/belongings',
  trip: '/garage/trip',
  kit: '/kit',
};

/** The way from nothing to a kit as four numbered stations on a line: solid is done, dashed is assumed, bold is next. */
export function WayList({ steps }: { steps: readonly Step[] }) {
  const { t } = useTranslation();
  const words = useStepWords();
  return (
    <ol className="way" aria-label={t('begin.way')}>
      {steps.map(({ id, state, isNext }, n) => (
        <li key={id} className={isNext ? 'way-step next' : 'way-step'}>
          <Link
            href={WHERE[id]}
            className="way-link"
            {...(isNext ? { 'aria-current': 'step' as const } : {})}
          >
            <Station number={n + 1} state={state} isNext={isNext} />
            <span className="way-words">
              <span className="way-name">{t(`begin.steps.${id}`)}</span>
              <span className={state === 'assumed' ? 'small assumed' : 'small quiet'}>
                {isNext && state !== 'assumed' ? `${t('begin.next')} ${words(id, state)}` : words(id, state)}
              </span>
            </span>
          </Link>
        </li>
      ))}
    </ol>
  );
}

function Station({ number, state, isNext }: { number: number; state: Step['state']; isNext: boolean }) {
  const done = state === 'done';
  return (
    <svg className="way-station" aria-hidden="true" width="36" height="36" viewBox="0 0 36 36">
      <rect
        x="2"
        y="2"
        width="32"
        height="32"
        fill={done ? 'var(--solid)' : 'var(--paper)'}
        stroke="var(--ink)"
        strokeWidth={isNext ? 3 : done ? 2 : 1}
        strokeDasharray={state === 'assumed' ? '5 3' : undefined}
      />
      {done ? <rect x="9" y="8" width="18" height="20" fill="var(--paper)" /> : null}
      <text x="18" y="24" textAnchor="middle" fontSize="16" fontWeight={isNext ? 700 : 400}>
        {number}
      </text>
    </svg>
  );
}
