import type { TFunction } from 'i18next';

const SHOWN = 3;

/** The first of a list of names, and how many more there are. */
export function few(names: readonly string[], t: TFunction): string {
  const some = names.slice(0, SHOWN).join('; ');
  return names.length > SHOWN ? t('sure.more', { names: some, count: names.length - SHOWN }) : some;
}
