import { mendForGood, recordRecheck } from '@waymend/garage/road/repairs';
import type { OpenRepair } from '@waymend/planner/ready/repairs-open';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { SquareMark } from '../../../look/square-mark.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { shownKm } from './shown-km.ts';
import { useAct } from './use-act.ts';

const FILL = { permanent: 'solid', temporary: 'half', 'made-safe': 'dot' } as const;

/** One open repair: how far and how fast, when to look again by the odometer, and the three acts. */
export function RepairRow({
  repair,
  vehicle,
  km,
  day,
}: {
  repair: OpenRepair;
  vehicle: string;
  km: number | null;
  day: string;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const { refusal, act } = useAct();
  const { id, title, lasts } = repair;
  const look = (found: 'good' | 'worse') => {
    if (km === null) return;
    const taken = { id: freshId('look'), repair: id, on: day, atKm: km, found };
    act(t(`jobs.repairs.looked.${found}`, { title }), (g) => recordRecheck(g, taken));
  };
  return (
    <li className="repair">
      <div className="piece">
        <SquareMark fill={FILL[lasts]} />
        <span className="piece-what">
          <b>{title}</b>
          <span>
            {t(`jobs.repairs.lasts.${lasts}`)}, {repair.on}
          </span>
          {repair.worse && <b>{t('jobs.repairs.foundWorse')}</b>}
          {repair.trustLeftKm !== null && (
            <span>
              {repair.trustLeftKm < 0
                ? t('jobs.repairs.trustOver', { distance: format.distance(-repair.trustLeftKm) })
                : t('jobs.repairs.trustLeft', { distance: format.distance(repair.trustLeftKm) })}
            </span>
          )}
          {repair.speedKmh !== null && (
            <span>{t('jobs.card.atMost', { distance: format.distance(repair.speedKmh) })}</span>
          )}
          {repair.nextLookKm !== null && repair.lookInKm !== null && (
            <b>
              {repair.lookInKm <= 0
                ? t('jobs.repairs.lookNow')
                : t('jobs.repairs.lookAt', {
                    odometer: format.distance(shownKm(garage, vehicle, repair.nextLookKm, day)),
                    distance: format.distance(repair.lookInKm),
                  })}
            </b>
          )}
          {repair.limits !== null && <span className="small">{repair.limits}</span>}
        </span>
      </div>
      {refusal !== null && (
        <p role="alert" className="decides prose">
          {refusal}
        </p>
      )}
      <div className="repair-acts">
        <Button
          onPress={() => look('good')}
          isDisabled={km === null}
          label={t('jobs.repairs.lookedGoodOf', { title })}
        >
          {t('jobs.repairs.lookedGood')}
        </Button>
        <Button
          onPress={() => look('worse')}
          isDisabled={km === null}
          label={t('jobs.repairs.lookedWorseOf', { title })}
        >
          {t('jobs.repairs.lookedWorse')}
        </Button>
        {lasts !== 'permanent' && (
          <Button
            onPress={() => act(t('jobs.repairs.mendedTitle', { title }), (g) => mendForGood(g, id, day))}
            label={t('jobs.repairs.mendedOf', { title })}
          >
            {t('jobs.repairs.mended')}
          </Button>
        )}
      </div>
    </li>
  );
}
