import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { Choice } from '../../look/field.tsx';
import { Sentence } from '../../look/parts.tsx';
import { useRecord } from '../../shell/stores.tsx';
import { useTrip } from '../../shell/use-trip.ts';

/** The vehicle or trailer a sheet is about: the trip's, until another is chosen. */
export function useChosenVehicle(): readonly [string | null, (id: string) => void] {
  const { garage } = useRecord();
  const { vehicleId } = useTrip();
  const [chosen, setChosen] = useState<string | null>(null);
  const id = chosen !== null && garage.vehicles[chosen] !== undefined ? chosen : vehicleId;
  return [id, setChosen];
}

/** Which vehicle; nothing to choose while there is only one. */
export function VehicleChoice({ value, onChange }: { value: string; onChange: (id: string) => void }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const all = Object.entries(garage.vehicles);
  if (all.length < 2) return null;
  return (
    <Choice
      label={t('vehicle.which')}
      value={value}
      onChange={onChange}
      options={all.map(([id, { name }]) => ({ id, label: name }))}
    />
  );
}

/** The next step while there is no vehicle. */
export function NoVehicle({ title }: { title: string }) {
  const { t } = useTranslation();
  return (
    <>
      <h1>{title}</h1>
      <Sentence>{t('vehicle.none')}</Sentence>
      <p>
        <Link href="/garage/begin" className="act as-link">
          {t('vehicle.toBegin')}
        </Link>
      </p>
    </>
  );
}
