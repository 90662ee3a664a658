import { useTranslation } from 'react-i18next';

export function BelongingsSheet() {
  const { t } = useTranslation();
  return <h1>{t('belongings.title')}</h1>;
}
