import { useTranslation } from 'react-i18next';
import type { Garage, Trip } from '@waymend/garage/record/schema';
import { Choice, NumberField } from '../../../look/field.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { changeTrip, changeVehicle } from './edit-trip.ts';
import { NoseLoad } from './nose-load.tsx';

const DRIVERS = ['gentle', 'average', 'hard'] as const;
const SHOPS = ['catalogue', 'listed'] as const;
const NONE = '';

/** How long, how it is driven, with what, where the kit rides and where it may be bought. */
export function Stay({ tripId, trip }: { tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const act = (change: (before: Garage) => Garage) =>
    void edit(t('trip.changed', { name: trip.name }), change);
  const set = (fields: Partial<Trip>) => act((before) => changeTrip(before, tripId, fields));
  const vehicles = Object.entries(garage.vehicles);
  const named = (kind: 'vehicle' | 'trailer') =>
    vehicles.filter(([, v]) => v.kind === kind).map(([id, { name }]) => ({ id, label: name }));
  const berths = Object.entries(garage.berths)
    .filter(([, { vehicle }]) => vehicle === trip.vehicle)
    .map(([id, { name }]) => ({ id, label: name }));
  const trailers = named('trailer');
  return (
    <Block title={t('trip.stay.title')}>
      <div className="fields">
        <NumberField
          label={t('trip.stay.days')}
          hint={t('trip.stay.daysHint')}
          value={trip.days}
          least={0}
          most={4000}
          digits={1}
          onChange={(days) => set({ days: days ?? 1 })}
        />
        <NumberField
          label={t('trip.stay.nights')}
          hint={t('trip.stay.nightsHint')}
          value={trip.campNights}
          least={0}
          most={4000}
          onChange={(nights) => set({ campNights: Math.round(nights ?? 0) })}
        />
        <Choice
          label={t('trip.stay.driver')}
          hint={t('trip.stay.driverHint')}
          value={trip.driver}
          options={DRIVERS.map((id) => ({ id, label: t(`trip.driver.${id}`) }))}
          onChange={(driver) => set({ driver })}
        />
        <Choice
          label={t('trip.stay.vehicle')}
          hint={t('trip.stay.vehicleHint')}
          value={trip.vehicle}
          options={named('vehicle')}
          onChange={(vehicle) => act((before) => changeVehicle(before, tripId, vehicle))}
        />
        {trailers.length > 0 && (
          <Choice
            label={t('trip.stay.trailer')}
            hint={t('trip.stay.trailerHint')}
            value={trip.trailer ?? NONE}
            options={[{ id: NONE, label: t('trip.stay.noTrailer') }, ...trailers]}
            onChange={(id) => set(given('trailer', id))}
          />
        )}
        <Choice
          label={t('trip.stay.kitBerth')}
          hint={t('trip.stay.kitBerthHint')}
          value={trip.kitBerth ?? NONE}
          options={[{ id: NONE, label: t('trip.stay.overAxle') }, ...berths]}
          onChange={(id) => set(given('kitBerth', id))}
        />
        <NumberField
          label={t('trip.stay.budget')}
          hint={t('trip.stay.budgetHint')}
          unit={garage.currency}
          value={trip.budget}
          least={0}
          onChange={(budget) => set({ budget: budget ?? 0 })}
        />
        <Choice
          label={t('trip.stay.buyFrom')}
          hint={t('trip.stay.buyFromHint')}
          value={trip.buyFrom}
          options={SHOPS.map((id) => ({ id, label: t(`trip.buyFrom.${id}`) }))}
          onChange={(buyFrom) => set({ buyFrom })}
        />
      </div>
      <NoseLoad tripId={tripId} trip={trip} />
    </Block>
  );
}

/** A reference to nothing is left out. */
function given(key: 'trailer' | 'kitBerth', id: string): Partial<Trip> {
  return Object.fromEntries([[key, id === NONE ? undefined : id]]);
}
