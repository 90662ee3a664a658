import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { usePlan, useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { StepId, StepState } from './the-way.ts';
import { ownedPieces, weighedPieces } from './the-way.ts';

/** What is there of a step, in a few words. */
export function useStepWords(): (id: StepId, state: StepState) => string {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const { tripId, trip, vehicle } = useTrip();
  const { answer, proving, noPlan } = usePlan();
  const kit = (): string => {
    if (noPlan !== null) return t('begin.at.kitClash');
    if (answer === null) return t(proving ? 'begin.at.kitWorking' : 'begin.at.kitOpen');
    return t('begin.at.kitDone', {
      chance: format.chance(1 - answer.unaided.kit),
      mass: format.mass(answer.kit.massGrams),
    });
  };
  const route = (): string => {
    const legs = Object.values(garage.legs).filter((leg) => leg.trip === tripId);
    const km = legs.reduce((sum, leg) => sum + leg.km, 0);
    return t('begin.at.tripDone', {
      name: trip?.name ?? '',
      distance: format.distance(km),
      count: trip?.days ?? 0,
    });
  };
  return (id, state) => {
    if (state === 'later') return t(`begin.later.${id}`);
    if (state === 'open') return id === 'kit' ? kit() : t(`begin.open.${id}`);
    switch (id) {
      case 'vehicle':
        return state === 'assumed'
          ? t('begin.at.vehicleAssumed', { name: vehicle?.name ?? '' })
          : (vehicle?.name ?? '');
      case 'belongings':
        return t('begin.at.belongingsDone', {
          count: ownedPieces(garage),
          pieces: format.count(ownedPieces(garage)),
          weighed: format.count(weighedPieces(garage)),
        });
      case 'trip':
        return state === 'assumed' ? t('begin.at.tripAssumed', { route: route() }) : route();
      case 'kit':
        return kit();
    }
  };
}
