import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import type { RailSize, SizeRail } from '@waymend/planner/views/size-rail';
import { Sentence } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { KitLines, VehicleRequest } from '../../../worker/vehicle/protocol.ts';
import { useAsk } from '../../../shell/use-ask.ts';
import { useKit } from '../use-kit.ts';
import { useWide } from '../use-wide.ts';
import { AtSize } from './at-size.tsx';
import { MeasureNext } from './measure-next.tsx';
import { NearFitList } from './near-fit-list.tsx';
import { OtherSizes } from './other-sizes.tsx';
import { stops } from './rail-data.ts';
import { RailDesk } from './rail-desk.tsx';
import { RailKey } from './rail-key.tsx';
import { RailOverview } from './rail-overview.tsx';
import { RailPhone } from './rail-phone.tsx';
import { RailTable } from './rail-table.tsx';
import { holesSentence, sizeSaid } from './rail-words.ts';
import './sizes.css';

/** Sizes: what the vehicle takes above the rule, what is owned below it, and the holes between. */
export function SizesSheet() {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const { kit, planned } = useKit();
  const request = useMemo(
    (): VehicleRequest | null =>
      tripId === null ? null : { kind: 'vehicle/rail', garage, trip: tripId, kit },
    [garage, tripId, kit],
  );
  const { reply } = useAsk(request);
  if (tripId === null)
    return (
      <>
        <h1>{t('rail.title')}</h1>
        <Sentence>{t('rail.noTrip')}</Sentence>
        <p>
          <Link href="/garage/trip" className="act as-link">
            {t('load.toTrip')}
          </Link>
        </p>
      </>
    );
  if (reply === null || reply.kind !== 'vehicle/rail')
    return (
      <>
        <h1>{t('rail.title')}</h1>
        {reply?.kind === 'refused' ? (
          reply.refusals.map((r) => <Sentence key={r.message}>{r.message}</Sentence>)
        ) : (
          <p className="quiet">{t('rail.laying')}</p>
        )}
      </>
    );
  return <Rail rail={reply.rail} trip={tripId} kit={kit} planned={planned} />;
}

function Rail({
  rail,
  trip,
  kit,
  planned,
}: {
  rail: SizeRail;
  trip: string;
  kit: KitLines;
  planned: boolean;
}) {
  const { t } = useTranslation();
  const wide = useWide();
  const [label, setLabel] = useState<string | null>(null);
  const all = stops(rail);
  const flag = all.find((s) => s.label === label) ?? all.find((s) => s.hole) ?? busiest(all);
  const takes = rail.sizes.filter((s) => s.places.length > 0).length;
  const head = (
    <header>
      <h1 className="sizes-head">{holesSentence(rail, planned, t)}</h1>
      <p className="quiet">
        {t('rail.takes', { name: rail.vehicle, count: takes, places: rail.places })}{' '}
        {t('rail.measured', { measured: rail.measured, places: rail.places })}
      </p>
    </header>
  );
  const detail = flag === null ? null : <AtSize trip={trip} kit={kit} rail={rail} size={flag} />;
  if (wide)
    return (
      <div className="sizes">
        {head}
        <Slider rail={rail} all={all} flag={flag} onFlag={setLabel} />
        <div className="sizes-below">
          {detail}
          <MeasureNext rail={rail} />
          <NearFitList rail={rail} />
          <OtherSizes rail={rail} />
          <RailKey />
        </div>
        <RailTable rail={rail} />
      </div>
    );
  return (
    <div className="sizes">
      {head}
      <RailOverview rail={rail} />
      <RailPhone rail={rail} flag={flag} onFlag={setLabel} />
      <div className="sizes-dock">{detail}</div>
      <div className="sizes-below">
        <MeasureNext rail={rail} />
        <NearFitList rail={rail} />
        <OtherSizes rail={rail} />
        <RailKey />
      </div>
      <RailTable rail={rail} />
    </div>
  );
}

/** The drawing with its flag: the arrow keys take it from size to size, Home and End to the ends. */
function Slider({
  rail,
  all,
  flag,
  onFlag,
}: {
  rail: SizeRail;
  all: readonly RailSize[];
  flag: RailSize | null;
  onFlag: (label: string) => void;
}) {
  const { t } = useTranslation();
  const now = all.findIndex((s) => s.label === flag?.label);
  const go = (to: number) => {
    const next = all[Math.min(all.length - 1, Math.max(0, to))];
    if (next !== undefined) onFlag(next.label);
  };
  const keys: Readonly<Record<string, () => void>> = {
    ArrowRight: () => go(now + 1),
    ArrowUp: () => go(now + 1),
    ArrowLeft: () => go(now - 1),
    ArrowDown: () => go(now - 1),
    Home: () => go(0),
    End: () => go(all.length - 1),
  };
  return (
    <div
      className="rail-slider"
      role="slider"
      tabIndex={0}
      aria-label={t('rail.flag')}
      aria-valuemin={0}
      aria-valuemax={Math.max(0, all.length - 1)}
      aria-valuenow={Math.max(0, now)}
      aria-valuetext={flag === null ? '' : sizeSaid(flag, t)}
      onKeyDown={(event) => {
        const act = keys[event.key];
        if (act === undefined) return;
        event.preventDefault();
        act();
      }}
    >
      <RailDesk rail={rail} flag={flag} onFlag={onFlag} />
    </div>
  );
}

function busiest(sizes: readonly RailSize[]): RailSize | null {
  return sizes.reduce<RailSize | null>(
    (most, s) => (most === null || s.places.length > most.places.length ? s : most),
    null,
  );
}
