import { useTranslation } from 'react-i18next';

export function WalkSheet() {
  const { t } = useTranslation();
  return <h1>{t('walk.title')}</h1>;
}
