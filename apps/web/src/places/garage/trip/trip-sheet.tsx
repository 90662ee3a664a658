import { useTranslation } from 'react-i18next';

export function TripSheet() {
  const { t } = useTranslation();
  return <h1>{t('trip.title')}</h1>;
}
