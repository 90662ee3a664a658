import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { Sentence } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { VehicleRequest } from '../../../worker/vehicle/protocol.ts';
import { useAsk } from '../../../shell/use-ask.ts';
import { useKit } from '../use-kit.ts';
import { LoadPicture } from './load-picture.tsx';
import './load.css';

/** Load: where everything rides, what it puts on the axles, and which limit comes first. */
export function LoadSheet() {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const { kit, planned } = useKit();
  const [picked, setPicked] = useState<string | null>(null);
  const request = useMemo(
    (): VehicleRequest | null =>
      tripId === null ? null : { kind: 'vehicle/load', garage, trip: tripId, kit },
    [garage, tripId, kit],
  );
  const { reply } = useAsk(request);
  if (tripId === null) return <NoTrip />;
  if (reply === null)
    return (
      <>
        <h1>{t('load.title')}</h1>
        <p className="quiet">{t('load.weighing')}</p>
      </>
    );
  if (reply.kind !== 'vehicle/load')
    return (
      <>
        <h1>{t('load.cannot')}</h1>
        {reply.kind === 'refused' &&
          reply.refusals.map((r) => <Sentence key={r.message}>{r.message}</Sentence>)}
        <p>
          <Link href="/vehicle/data" className="act as-link">
            {t('load.toData')}
          </Link>
        </p>
      </>
    );
  return (
    <LoadPicture
      trip={tripId}
      view={reply.view}
      moves={reply.moves}
      planned={planned}
      picked={picked}
      onPick={setPicked}
    />
  );
}

function NoTrip() {
  const { t } = useTranslation();
  return (
    <>
      <h1>{t('load.title')}</h1>
      <Sentence>{t('load.noTrip')}</Sentence>
      <p>
        <Link href="/garage/trip" className="act as-link">
          {t('load.toTrip')}
        </Link>
      </p>
    </>
  );
}
