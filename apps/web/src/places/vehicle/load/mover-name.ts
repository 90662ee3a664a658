import type { TFunction } from 'i18next';
import type { LoadMove } from '@waymend/planner/views/load-moves';
import type { Format } from '../../../format/use-format.ts';

/** 'food, 71 kg'; the kit and the trial 10 kg under their own words. */
export function moverName({ mover, name, kg }: LoadMove, t: TFunction, format: Format): string {
  const mass = format.mass(Math.round(kg * 1000));
  switch (mover.kind) {
    case 'ten':
      return t('load.tenKg', { mass: format.load(kg) });
    case 'kit':
      return t('load.theKit', { mass });
    default:
      return t('load.thing', { name, mass });
  }
}
