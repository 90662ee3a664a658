import type { TFunction } from 'i18next';
import type { MusterRow } from './groups.ts';

/** How a row stands: 'back', '2 of 3 back', '1 lost, 1 out'. */
export function rowWords(row: MusterRow, t: TFunction): string {
  const { out, back, lost, damaged, used, missing, missingParts } = row;
  if (back === out && missingParts.length === 0 && used === 0)
    return t(out === 1 ? 'bags.muster.isBack' : 'bags.muster.allBack', { count: out });
  const parts = [
    back > 0 ? t('bags.muster.nBack', { n: back, of: out }) : null,
    lost > 0 ? t('bags.muster.nLost', { n: lost }) : null,
    damaged > 0 ? t('bags.muster.nDamaged', { n: damaged }) : null,
    used > 0 ? t(row.perPiece === null ? 'bags.muster.nUsed' : 'bags.muster.stockUsed', { n: used }) : null,
    missing > 0 ? t('bags.muster.nOut', { n: missing }) : null,
    missingParts.length > 0 ? t('bags.muster.without', { parts: missingParts.join(', ') }) : null,
  ];
  return parts.filter((part) => part !== null).join(', ');
}
