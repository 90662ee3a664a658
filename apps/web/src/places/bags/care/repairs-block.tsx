import type { RepairAnswer } from '@waymend/planner/answer/ready-answer';
import { useTranslation } from 'react-i18next';
import { dayWords } from '../../../format/day-words.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';

/** Repairs that still ask for something: how far they may be trusted, and when to look again. */
export function RepairsBlock({ repairs }: { repairs: readonly RepairAnswer[] }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <Block title={t('bags.care.repairs')} aside={t('bags.care.repairsCount', { count: repairs.length })}>
      {repairs.length === 0 ? (
        <p className="quiet">{t('bags.care.noRepairs')}</p>
      ) : (
        <ul className="plain-rows">
          {repairs.map((repair) => (
            <li key={repair.id}>
              <p>
                <span className="decides">{repair.title}</span>, {t(`bags.care.lasts.${repair.lasts}`)},{' '}
                {dayWords(repair.on)}
              </p>
              {repair.worse && <p className="decides">{t('bags.care.worse')}</p>}
              {repair.lookInKm !== null && (
                <p>
                  {repair.lookInKm <= 0
                    ? t('bags.care.lookNow')
                    : t('bags.care.lookIn', { distance: format.distance(repair.lookInKm) })}
                </p>
              )}
              {repair.trustLeftKm !== null && (
                <p>{t('bags.care.trust', { distance: format.distance(Math.max(0, repair.trustLeftKm)) })}</p>
              )}
              {repair.limits !== null && <p className="small quiet">{repair.limits}</p>}
            </li>
          ))}
        </ul>
      )}
    </Block>
  );
}
