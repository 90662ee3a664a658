import { useTranslation } from 'react-i18next';
import type { KeptGarage } from '../../../record/garages.ts';

export function useGarageName({ garage }: Pick<KeptGarage, 'garage'>): string {
  const { t } = useTranslation();
  return garage.name === '' ? t('shelf.unnamed') : garage.name;
}
