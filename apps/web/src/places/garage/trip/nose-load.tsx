import { useTranslation } from 'react-i18next';
import type { Trip } from '@waymend/garage/record/schema';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Caution } from '../../../look/parts.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { addLoad, removeLoad } from './edit-trip.ts';
import { noseOf } from './nose-of.ts';

/** A trailer presses on the hitch: says so when that is not counted, or still counted with nothing behind, and offers to mend it. */
export function NoseLoad({ tripId, trip }: { tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const nose = noseOf(garage, trip);
  switch (nose.kind) {
    case 'right':
      return null;
    case 'missing': {
      const { name, kg, isAssumed } = nose;
      return (
        <div className="nose-load">
          <Caution>
            <p className="decides">{t('trip.nose.missing', { name })}</p>
            <p>{t('trip.nose.weigh')}</p>
          </Caution>
          <p className="small quiet">
            {t(isAssumed ? 'trip.nose.typical' : 'trip.nose.recorded')}{' '}
            <span className={isAssumed ? 'assumed' : ''}>{format.load(kg)}</span>
          </p>
          <div className="acts">
            <Button
              main
              onPress={() =>
                void edit(t('trip.nose.added', { name }), (before) =>
                  addLoad(before, tripId, freshId('nose'), {
                    name: t('trip.nose.load', { name }),
                    kg,
                    kind: 'trailer-nose',
                  }),
                )
              }
            >
              {t('trip.nose.count', { mass: format.load(kg) })}
            </Button>
          </div>
        </div>
      );
    }
    case 'left-over':
      return (
        <div className="nose-load">
          <Caution>
            <p className="decides">{t('trip.nose.leftOver', { mass: format.load(nose.kg) })}</p>
          </Caution>
          <div className="acts">
            <Button
              onPress={() =>
                void edit(t('trip.nose.removed'), (before) =>
                  nose.loads.reduce((now, load) => removeLoad(now, tripId, load), before),
                )
              }
            >
              {t('trip.nose.remove')}
            </Button>
          </div>
        </div>
      );
  }
}
