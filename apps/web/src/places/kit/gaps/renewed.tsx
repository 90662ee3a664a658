import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { notRenewed, renewalId } from '../edits.ts';

/** What was marked as renewed at home on this vehicle, with the way back. */
export function Renewed() {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { vehicleId } = useTrip();
  const found = Object.entries(garage.weakPoints).filter(
    ([id, weak]) => weak.vehicle === vehicleId && id === renewalId(weak.vehicle, weak.failure),
  );
  if (found.length === 0) return null;
  return (
    <Block title={t('gaps.renewedList')}>
      <ul className="cure-list">
        {found.map(([id, weak]) => (
          <li key={id} className="cure">
            <p>{weak.note ?? weak.failure}</p>
            <p className="small quiet">
              {t('gaps.rarer', { times: Math.round(1 / Math.max(weak.factor, 0.01)) })}
            </p>
            <div className="acts">
              <Button
                label={`${t('gaps.unrenew')}: ${weak.note ?? weak.failure}`}
                onPress={() =>
                  void edit(t('gaps.unrenewed', { what: weak.note ?? weak.failure }), (before) =>
                    notRenewed(before, id),
                  )
                }
              >
                {t('gaps.unrenew')}
              </Button>
            </div>
          </li>
        ))}
      </ul>
    </Block>
  );
}
