import { useTranslation } from 'react-i18next';
import { Choice } from '../../../../look/field.tsx';
import { useRecord } from '../../../../shell/stores.tsx';
import { useTrip } from '../../../../shell/use-trip.ts';
import type { Row } from '../rows.ts';
import { useEditThing } from '../use-edit-thing.ts';

const NONE = '-';

/** Where it rides: a berth of its own, or with the kit. Berths of the open trip's vehicle first. */
export function BerthChoice({ row }: { row: Row }) {
  const { t } = useTranslation();
  const { berths, vehicles } = useRecord().garage;
  const { vehicleId, trip } = useTrip();
  const { change } = useEditThing(row.id, row.name);
  const usual = trip?.kitBerth === undefined ? undefined : berths[trip.kitBerth]?.name;
  const options = Object.entries(berths)
    .sort(([, a], [, b]) => Number(b.vehicle === vehicleId) - Number(a.vehicle === vehicleId))
    .map(([id, berth]) => ({
      id,
      label:
        berth.vehicle === vehicleId
          ? berth.name
          : t('belongings.berthElsewhere', {
              berth: berth.name,
              vehicle: vehicles[berth.vehicle]?.name ?? berth.vehicle,
            }),
    }));
  return (
    <Choice
      label={t('belongings.berth')}
      value={row.belonging.berth ?? NONE}
      onChange={(berth) =>
        berth === NONE
          ? change(t('belongings.berth'), {}, ['berth'])
          : change(t('belongings.berth'), { berth })
      }
      options={[
        {
          id: NONE,
          label:
            usual === undefined ? t('belongings.berthNone') : t('belongings.berthWithKit', { berth: usual }),
        },
        ...options,
      ]}
    />
  );
}
