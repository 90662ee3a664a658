import type { TFunction } from 'i18next';
import type { LoadMove } from '@waymend/planner/views/load-moves';
import type { LoadSpot, LoadView, Tightest } from '@waymend/planner/views/load-view';
import type { Format } from '../../../format/use-format.ts';

/** '29 kg left', '12 kg over', or that nothing limits it. */
export function verdict(marginKg: number | null, t: TFunction, format: Format): string {
  if (marginKg === null) return t('load.noLimit');
  // Rounded towards the limit: what is said to be left is there.
  return marginKg >= 0
    ? t('load.left', { mass: format.load(Math.floor(marginKg + 1e-6)) })
    : t('load.over', { mass: format.load(Math.ceil(-marginKg - 1e-6)) });
}

/** '1,751 of 1,780 kg', or the mass alone. */
export function ofLimit(kg: number, limitKg: number | null, t: TFunction, format: Format): string {
  return limitKg === null
    ? format.load(kg)
    : t('load.of', { mass: format.load(kg).replace(/\u00a0.*$/, ''), limit: format.load(limitKg) });
}

/** The sentence the sheet opens with. */
export function headline({ tightest }: LoadView, t: TFunction, format: Format): string {
  if (tightest === null) return t('load.noLimits');
  const left = verdict(tightest.marginKg, t, format);
  const what = limitName(tightest, t);
  return tightest.marginKg >= 0 ? t('load.sets', { what, left }) : t('load.broken', { what, left });
}

function limitName({ of, name }: Tightest, t: TFunction): string {
  switch (of) {
    case 'front':
      return t('load.theFront');
    case 'rear':
      return t('load.theRear');
    case 'gross':
      return t('load.theGross');
    case 'roof':
      return t('load.theRoof');
    case 'tyres-front':
      return t('load.theFrontTyres');
    case 'tyres-rear':
      return t('load.theRearTyres');
    case 'berth':
      return t('load.theBerth', { name: name ?? '' });
  }
}

/** What a relief is relief of. */
export function offWhat({ helped }: LoadView, t: TFunction): string {
  switch (helped?.of) {
    case 'front':
    case 'tyres-front':
      return t('load.offFront');
    case 'roof':
      return t('load.offRoof');
    case 'berth':
      return t('load.offBerth', { name: helped.name ?? '' });
    default:
      return t('load.offRear');
  }
}

/** Why a move is none: the limit it would pass. */
export function blockedWords({ blocked, toName }: LoadMove, t: TFunction, format: Format): string {
  if (blocked === null) return '';
  const over = format.load(Math.max(1, Math.ceil(blocked.overKg)));
  switch (blocked.what) {
    case 'berth':
      return t('load.noBerth', { name: toName, over });
    case 'roof':
      return t('load.noRoof', { over });
    case 'front':
      return t('load.noFront', { over });
    case 'rear':
      return t('load.noRear', { over });
  }
}

/** '+3', '-3', '0': whole kilograms more or less. */
export function signed(kg: number, format: Format): string {
  const whole = Math.round(kg);
  const text = format.load(Math.abs(whole));
  return whole === 0 ? text : whole > 0 ? `+${text}` : `\u2212${text}`;
}

/** A spot's name as the list says it. */
export function spotName(
  { name, berth, assumed }: Pick<LoadSpot, 'name' | 'berth' | 'assumed'>,
  t: TFunction,
): string {
  if (berth) return name;
  return assumed ? t('load.noBerthYet', { name: name === 'kit' ? t('load.kit') : name }) : name;
}
