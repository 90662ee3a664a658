import type { TFunction } from 'i18next';
import type { FittingRow } from '@waymend/planner/views/fitting-list';

/** What to look at and how to measure it, in words made from what the place takes. */
export function lookAt(row: FittingRow, t: TFunction): readonly string[] {
  const words = [t(`walk.measure.${measureOf(row.drive)}`), t(`walk.reach.${row.access}`)];
  if (row.hold !== null) words.push(t('walk.farSide'));
  if (row.usual.length > 1) words.push(t('walk.mostly', { sizes: row.usual.join(', ') }));
  return words;
}

/** The caution that belongs to where it is; null where nothing but the engine's heat can hurt. */
export function dangerOf(row: FittingRow, t: TFunction): string | null {
  if (row.stance === 'under') return t('walk.danger.under');
  if (row.area === 'engine-bay') return t('walk.danger.engine');
  return row.critical === 'brake' || row.critical === 'steering' ? t('walk.danger.critical') : null;
}

function measureOf(drive: FittingRow['drive']) {
  switch (drive) {
    case 'hex':
    case 'flare':
    case 'locknut-hex':
      return 'flats';
    case 'hex-key':
    case 'square':
      return 'inside';
    case 'lobe':
    case 'lobe-external':
    case 'spline':
      return 'lobe';
    case 'cross':
    case 'slot':
      return 'driver';
    case 'locknut-peg':
      return 'peg';
  }
}
