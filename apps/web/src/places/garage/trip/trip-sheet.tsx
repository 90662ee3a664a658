import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import type { Trip } from '@waymend/garage/record/schema';
import { useFormat } from '../../../format/use-format.ts';
import { Block, Sentence } from '../../../look/parts.tsx';
import { usePlan, useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { JobPicker } from '../job-picker.tsx';
import { Aboard } from './aboard.tsx';
import { changeTrip, legsOf } from './edit-trip.ts';
import { ExpectedFailures, TripVerdict, useExpected } from './expected-failures.tsx';
import { expectedText, totals } from './expected-rows.ts';
import { Legs } from './legs.tsx';
import { Loads } from './loads.tsx';
import { Stay } from './stay.tsx';
import { TripHead } from './trip-head.tsx';
import './trip.css';

/** Where the trip goes, for how long and with whom; beside it what is to be expected of it, so that each edit shows what it does. */
export function TripSheet() {
  const { t } = useTranslation();
  const { tripId, trip } = useTrip();
  if (tripId === null || trip === null) {
    return (
      <div className="block">
        <h1>{t('trip.title')}</h1>
        <Sentence>{t('trip.none')}</Sentence>
        <Link href="/garage/begin" className="act main trip-on">
          {t('trip.toBegin')}
        </Link>
      </div>
    );
  }
  return <OpenTrip key={tripId} tripId={tripId} trip={trip} />;
}

function OpenTrip({ tripId, trip }: { tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const legs = legsOf(garage, tripId);
  const [chosen, setChosen] = useState<string | null>(legs.length === 1 ? (legs[0]?.[0] ?? null) : null);
  const expecting = useExpected(tripId);
  const mustDo = (next: readonly string[], title: string) =>
    void edit(title, (before) => changeTrip(before, tripId, { mustDo: [...next] }));
  return (
    <div className="trip">
      <header className="trip-top">
        <h1>{trip.name}</h1>
        <TripSentence tripId={tripId} trip={trip} />
      </header>
      <div className="trip-form">
        <TripHead tripId={tripId} trip={trip} />
        <Legs tripId={tripId} chosen={chosen} onChoose={setChosen} />
        <Stay tripId={tripId} trip={trip} />
        <Aboard tripId={tripId} trip={trip} />
        <Loads tripId={tripId} trip={trip} />
        <Block title={t('trip.mustDo.title')}>
          <JobPicker
            chosen={trip.mustDo}
            label={t('trip.mustDo.search')}
            hint={t('trip.mustDo.hint')}
            none={t('trip.mustDo.none')}
            onAdd={(id, title) => mustDo([...trip.mustDo, id], t('trip.mustDo.added', { title }))}
            onRemove={(id, title) =>
              mustDo(
                trip.mustDo.filter((one) => one !== id),
                t('trip.mustDo.removed', { title }),
              )
            }
          />
        </Block>
      </div>
      <aside className="trip-beside" aria-label={t('trip.expected.title')}>
        <ExpectedFailures {...expecting} />
      </aside>
      <TripVerdict {...expecting} />
    </div>
  );
}

/** The sheet's answer in one sentence. */
function TripSentence({ tripId, trip }: { tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const { answer } = usePlan();
  const km = legsOf(garage, tripId).reduce((sum, [, leg]) => sum + leg.km, 0);
  const expected = answer?.trip.id === tripId ? totals(answer.trip.expected) : null;
  return (
    <p className="quiet">
      {t('trip.sentence', { distance: format.distance(km), count: trip.days })}
      {expected !== null &&
        ` ${t('trip.sentenceExpected', { failures: expectedText(expected.failures), stopping: expectedText(expected.stopping) })}`}
    </p>
  );
}
