import { useMemo } from 'react';
import { useTranslation } from 'react-i18next';
import { LinkButton } from '../../../look/link-button.tsx';
import { Sentence } from '../../../look/parts.tsx';
import { useAsk } from '../../../shell/use-ask.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { JobsRequest } from '../../../worker/jobs/protocol.ts';
import { NoTrip } from '../no-trip.tsx';
import { DoneForm } from './done-form.tsx';
import './repairs.css';

/** What was done about a job: asked after it, with everything that can be known filled in. */
export function DoneSheet({ job }: { job: string }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { tripId, vehicleId } = useTrip();
  const request = useMemo(
    (): JobsRequest | null => (tripId === null ? null : { kind: 'jobs/ways', garage, trip: tripId, job }),
    [garage, tripId, job],
  );
  const { reply } = useAsk(request);
  if (tripId === null || vehicleId === null) return <NoTrip title={t('jobs.done.title')} />;
  const known = reply?.kind === 'jobs/ways' ? reply : null;
  const [first] = known?.ways ?? [];
  if (known === null || first === undefined)
    return (
      <div className="jobs-sheet">
        <h1>{t('jobs.done.title')}</h1>
        {reply === null ? (
          <p className="quiet">{t('jobs.reading')}</p>
        ) : (
          <Sentence>{t('jobs.card.notHere', { job: job.slice(0, 40) })}</Sentence>
        )}
        <p>
          <LinkButton to="/jobs/card">{t('jobs.card.toAll')}</LinkButton>
        </p>
      </div>
    );
  return <DoneForm card={job} trip={tripId} vehicle={vehicleId} known={known} first={first} />;
}
