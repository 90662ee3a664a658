import { useTranslation } from 'react-i18next';
import { LinkButton } from '../../look/link-button.tsx';
import { Sentence } from '../../look/parts.tsx';

/** The next step while there is no trip: a card needs a vehicle, people and what is aboard. */
export function NoTrip({ title }: { title: string }) {
  const { t } = useTranslation();
  return (
    <div className="jobs-sheet">
      <h1>{title}</h1>
      <Sentence>{t('jobs.noTrip')}</Sentence>
      <p>
        <LinkButton to="/garage/begin" main>
          {t('jobs.toBegin')}
        </LinkButton>
      </p>
    </div>
  );
}
