import { useTranslation } from 'react-i18next';

export function SettingsSheet() {
  const { t } = useTranslation();
  return <h1>{t('settings.title')}</h1>;
}
