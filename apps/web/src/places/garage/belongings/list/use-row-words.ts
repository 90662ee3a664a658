import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import type { Row, Standing } from '../rows.ts';

export interface RowWords {
  /** 'combination wrench'. */
  readonly name: string;
  /** '17 mm'; empty where there is none. */
  readonly size: string;
  /** 'comes along, always bring'. */
  readonly said: string;
  /** 'drawer in the canopy'. */
  readonly where: string;
  /** '2 x 0.41 kg' or 'mass unknown'. */
  readonly mass: string;
}

const WHY_KEYS = {
  'adds-nothing': 'belongings.homeAddsNothing',
  'over-the-limit': 'belongings.homeLimit',
  'not-ready': 'belongings.homeNotReady',
  'not-understood': 'belongings.homeUnknown',
  never: 'belongings.homeNever',
  double: 'belongings.homeDouble',
  'does-not-fit': 'belongings.homeNoFit',
} as const;

const isWhy = (why: string): why is keyof typeof WHY_KEYS => Object.hasOwn(WHY_KEYS, why);

export interface WordsOfRow {
  readonly of: (row: Row, standing: Standing) => RowWords;
  /** Said after a mass that nobody has weighed. */
  readonly aside: string;
  readonly fold: (name: string, isOpen: boolean) => string;
}

/** What rows say, in words: the list and the sheet of one thing say the same. */
export function useRowWords(): WordsOfRow {
  const { t } = useTranslation();
  const format = useFormat();
  const standingWords = (standing: Standing): string | null => {
    switch (standing.kind) {
      case 'along':
        return t('belongings.along');
      case 'some':
        return t('belongings.some', { copies: standing.copies, of: standing.of });
      case 'home':
        return isWhy(standing.why) ? t(WHY_KEYS[standing.why]) : t('belongings.home');
      case 'buy':
        return standing.chosen ? t('belongings.buyChosen') : t('belongings.forSale');
      case 'unknown':
        return null;
    }
  };
  const of = (row: Row, standing: Standing): RowWords => {
    const { belonging, each, contents } = row;
    const one = each === null ? t('belongings.noMass') : format.mass(each);
    const said = [
      standingWords(standing),
      contents === null ? null : t('belongings.holds', { count: contents }),
      belonging.set === undefined
        ? null
        : t(belonging.set.carry === 'whole' ? 'belongings.whole' : 'belongings.loose'),
      belonging.state === 'ready' ? null : t(`belongings.state_${belonging.state}`),
      belonging.pin === undefined ? null : t(`belongings.pin_${belonging.pin}`),
    ];
    const inside = row.inside === null ? null : t('belongings.inSet', { set: row.inside });
    return {
      name: row.name,
      size: row.size ?? '',
      said: joined(said),
      where: joined([inside, row.berth]),
      mass: belonging.copies > 1 ? t('belongings.copiesOf', { copies: belonging.copies, one }) : one,
    };
  };
  return {
    of,
    aside: t('belongings.estimatedAside'),
    fold: (name, isOpen) => t(isOpen ? 'belongings.foldNamed' : 'belongings.unfoldNamed', { name }),
  };
}

function joined(parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null && part !== '').join(', ');
}
