import { useTranslation } from 'react-i18next';

export function FittingsSheet() {
  const { t } = useTranslation();
  return <h1>{t('fittings.title')}</h1>;
}
