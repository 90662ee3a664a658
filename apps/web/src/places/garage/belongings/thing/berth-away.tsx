import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { Sentence } from '../../../../look/parts.tsx';
import { useRecord } from '../../../../shell/stores.tsx';
import { useTrip } from '../../../../shell/use-trip.ts';
import type { Row } from '../rows.ts';
import { useEditThing } from '../use-edit-thing.ts';
import { berthAway } from './is-away.ts';

/** A thing whose berth is on a vehicle that this trip does not go with: says so, and offers the berths there are. */
export function BerthAway({ row }: { row: Row }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { trip } = useTrip();
  const { change } = useEditThing(row.id, row.name);
  const away = trip === null ? null : berthAway(garage, row.belonging, trip.vehicle);
  if (away === null) return null;
  return (
    <div className="thing-asks" role="note">
      <Sentence strong>
        {t('belongings.berthAway', { berth: away.berth, vehicle: away.vehicle, here: away.here })}
      </Sentence>
      <div className="acts">
        {away.offered.map(({ id, name }) => (
          <Button
            key={id}
            label={t('belongings.berthAwayTo', { berth: name })}
            onPress={() => change(t('belongings.berth'), { berth: id })}
          >
            {name}
          </Button>
        ))}
        <Button onPress={() => change(t('belongings.berth'), {}, ['berth'])}>
          {t('belongings.berthAwayKit')}
        </Button>
      </div>
    </div>
  );
}
