import type { Refusal } from '@waymend/core/result';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { usePlan, useRecord } from '../../shell/stores.tsx';
import { useTrip } from '../../shell/use-trip.ts';
import { NoPlan } from './no-plan.tsx';

/** Shows a sheet when there is an answer; else why there is none, and the sheet that cures it. */
export function NeedsPlan({ children }: { children: (answer: PlanAnswer) => ReactNode }) {
  const { t } = useTranslation();
  const { answer, noPlan, refusals, broken, proving } = usePlan();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  if (broken !== null) return <p role="alert">{t('app.broken', { cause: broken })}</p>;
  if (Object.keys(garage.vehicles).length === 0)
    return (
      <Missing
        title={t('kit.noVehicle')}
        words={t('kit.noVehicleWords')}
        to="/garage/begin"
        act={t('kit.toBegin')}
      />
    );
  if (tripId === null)
    return (
      <Missing
        title={t('kit.noTrip_')}
        words={t('kit.noTripWords')}
        to="/garage/trip"
        act={t('kit.toTrip')}
      />
    );
  if (noPlan !== null) return <NoPlan sentences={noPlan} />;
  if (refusals.length > 0) return <Refused refusals={refusals} />;
  if (answer !== null) return children(answer);
  return (
    <div className="kit-empty">
      <h1>{t('kit.title')}</h1>
      <p role="status">{proving ? t('kit.planning') : t('kit.stoppedEarly')}</p>
      <BareAxes />
    </div>
  );
}

function Missing({ title, words, to, act }: { title: string; words: string; to: string; act: string }) {
  return (
    <div className="kit-empty">
      <h1>{title}</h1>
      <BareAxes />
      <p className="sentence">{words}</p>
      <p>
        <Link href={to} className="word-link">
          {act}
        </Link>
      </p>
    </div>
  );
}

function Refused({ refusals }: { refusals: readonly Refusal[] }) {
  const { t } = useTranslation();
  return (
    <div className="kit-empty">
      <h1>{t('kit.refused')}</h1>
      <BareAxes />
      <ul className="kit-warnings">
        {refusals.map((refusal) => {
          const { to, act } = cureOf(refusal.path ?? '');
          return (
            <li key={refusal.message}>
              <p className="sentence">{refusal.message}</p>
              <Link href={to} className="word-link">
                {t(`kit.${act}`)}
              </Link>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** The sheet where what a refusal is about is entered. */
export function cureOf(path: string): {
  readonly to: string;
  readonly act: 'toTrip' | 'toBelongings' | 'toPeople' | 'toVehicle';
} {
  const [root = ''] = path.split('.');
  if (root === 'belongings' || root === 'bags') return { to: '/garage/belongings', act: 'toBelongings' };
  if (root === 'people') return { to: '/garage/people', act: 'toPeople' };
  if (['vehicles', 'fittings', 'berths', 'weakPoints', 'wheelbase', 'tyre'].includes(root))
    return { to: '/vehicle', act: 'toVehicle' };
  return { to: '/garage/trip', act: 'toTrip' };
}

/** The picture's bare axes, waiting for their curve. */
function BareAxes() {
  return (
    <svg
      aria-hidden="true"
      width="100%"
      height="160"
      viewBox="0 0 360 160"
      preserveAspectRatio="xMinYMid meet"
    >
      <path
        d="M30 8V140H350M24 40H30M24 74H30M24 107H30M94 140V146M158 140V146M222 140V146M286 140V146"
        fill="none"
        stroke="var(--ink)"
      />
    </svg>
  );
}
