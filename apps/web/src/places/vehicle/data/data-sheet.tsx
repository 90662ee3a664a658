import { useTranslation } from 'react-i18next';

export function DataSheet() {
  const { t } = useTranslation();
  return <h1>{t('vehicle.data')}</h1>;
}
