import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { LinkButton } from '../../../look/link-button.tsx';
import { Block, Sentence } from '../../../look/parts.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { useAsk } from '../../../shell/use-ask.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { JobsRequest } from '../../../worker/jobs/protocol.ts';
import { NoTrip } from '../no-trip.tsx';
import { OdometerBlock } from './odometer-block.tsx';
import { RepairRow } from './repair-row.tsx';
import { lastShownKm } from './shown-km.ts';
import './repairs.css';

/** Repairs that still ask for something: what is due at which odometer, the looks taken, and the permanent fix. */
export function RepairsSheet() {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const { today } = useStores();
  const { tripId, vehicleId, vehicle } = useTrip();
  const known = vehicleId === null ? null : lastShownKm(garage, vehicleId);
  const [typedKm, setTypedKm] = useState<number | null>(null);
  const request = useMemo(
    (): JobsRequest | null =>
      vehicleId === null ? null : { kind: 'jobs/repairs', garage, vehicle: vehicleId },
    [garage, vehicleId],
  );
  const { reply } = useAsk(request);
  if (tripId === null || vehicleId === null || vehicle === null)
    return <NoTrip title={t('jobs.repairs.title')} />;
  const day = dateOf(today());
  const repairs = reply?.kind === 'jobs/repairs' ? reply.repairs : null;
  const km = typedKm ?? known;
  return (
    <div className="jobs-sheet repairs">
      <h1>
        {repairs === null
          ? t('jobs.repairs.title')
          : repairs.length === 0
            ? t('jobs.repairs.none')
            : t('jobs.repairs.headline', { count: repairs.length })}
      </h1>
      <p className="quiet">
        {vehicle.name}
        {known !== null && `, ${t('jobs.repairs.lastAt', { distance: format.distance(known) })}`}
      </p>
      <OdometerBlock vehicle={vehicleId} km={km} onKm={setTypedKm} day={day} />
      {repairs === null ? (
        <p className="quiet">{t('jobs.reading')}</p>
      ) : (
        repairs.length > 0 && (
          <Block title={t('jobs.repairs.watch')}>
            <ul className="repair-rows">
              {repairs.map((repair) => (
                <RepairRow key={repair.id} repair={repair} vehicle={vehicleId} km={km} day={day} />
              ))}
            </ul>
            <p className="small prose">{t('jobs.repairs.estimate')}</p>
          </Block>
        )
      )}
      <Block title={t('jobs.repairs.record')}>
        <Sentence>{t('jobs.repairs.how')}</Sentence>
        <p>
          <LinkButton to="/jobs/card">{t('jobs.repairs.choose')}</LinkButton>
        </p>
      </Block>
    </div>
  );
}
