import { useTranslation } from 'react-i18next';

export function PeopleSheet() {
  const { t } = useTranslation();
  return <h1>{t('people.title')}</h1>;
}
