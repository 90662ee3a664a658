import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { Trip } from '@waymend/garage/record/schema';
import { FIRST_LEG } from '@waymend/garage/start/first-guess';
import { Button } from '../../../look/button.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { Choice } from '../../../look/field.tsx';
import { More } from '../../../look/more.tsx';
import { Sentence } from '../../../look/parts.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord, useSettings } from '../../../shell/stores.tsx';
import { changeTrip, copyTrip, legsOf, newTrip, PLAIN_LEG, removeTrip } from './edit-trip.ts';

/** Which trip is open, its name, and trips made, copied and taken off the record. */
export function TripHead({ tripId, trip }: { tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { change } = useSettings();
  const [isAsking, setAsking] = useState(false);
  const trips = Object.entries(garage.trips);
  const idsFor = (name: string) => {
    const id = freshId(name);
    return { trip: id, leg: (n: number) => `${id}-${n}` };
  };
  const make = async () => {
    const name = t('trip.newName', { number: trips.length + 1 });
    const ids = idsFor(name);
    const leg = { ...PLAIN_LEG, ...FIRST_LEG };
    await edit(t('trip.made', { name }), (before) => newTrip(before, ids, trip, name, leg));
    change({ trip: ids.trip });
  };
  const copy = async () => {
    const name = t('trip.copyName', { name: trip.name }).slice(0, 200);
    const ids = idsFor(name);
    await edit(t('trip.copied', { name: trip.name }), (before) => copyTrip(before, tripId, ids, name));
    change({ trip: ids.trip });
  };
  const remove = async () => {
    setAsking(false);
    await edit(t('trip.removed', { name: trip.name }), (before) => removeTrip(before, tripId));
    change({ trip: null });
  };
  return (
    <div className="trip-head">
      {trips.length > 1 && (
        <div className="fields">
          <Choice
            label={t('trip.open')}
            value={tripId}
            options={trips.map(([id, { name }]) => ({ id, label: name }))}
            onChange={(id) => change({ trip: id })}
          />
        </div>
      )}
      <More title={t('trip.head')} summary={t('trip.headSummary')}>
        <div className="block">
          <SettledTextField
            label={t('trip.name')}
            value={trip.name}
            onSettle={(name) => {
              if (name !== '')
                void edit(t('trip.renamed', { name }), (before) => changeTrip(before, tripId, { name }));
            }}
          />
          <div className="acts">
            <Button onPress={() => void make()}>{t('trip.make')}</Button>
            <Button onPress={() => void copy()}>{t('trip.copy')}</Button>
            <Button onPress={() => setAsking(true)}>{t('trip.remove')}</Button>
          </div>
        </div>
      </More>
      <Dialog
        title={t('trip.removeTitle', { name: trip.name })}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
      >
        <div className="block">
          <Sentence>{t('trip.removeWhat', { count: legsOf(garage, tripId).length })}</Sentence>
          <div className="acts">
            <Button main onPress={() => void remove()}>
              {t('trip.removeYes', { name: trip.name })}
            </Button>
            <Button onPress={() => setAsking(false)}>{t('trip.removeNo')}</Button>
          </div>
        </div>
      </Dialog>
    </div>
  );
}
