import { useTranslation } from 'react-i18next';

export function RecordSheet() {
  const { t } = useTranslation();
  return <h1>{t('record.title')}</h1>;
}
