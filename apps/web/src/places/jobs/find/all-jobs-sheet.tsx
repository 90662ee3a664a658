import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Block, Sentence } from '../../../look/parts.tsx';
import { SearchField } from '../../../look/search-field.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { NoTrip } from '../no-trip.tsx';
import { RowLinks } from '../row-link.tsx';
import { hasWords } from './find-words.ts';
import { useJobList } from './use-job-list.ts';

/** Every job of this vehicle, by system: for who knows what it is. */
export function AllJobsSheet() {
  const { t } = useTranslation();
  const { tripId } = useTrip();
  const { list, refusal } = useJobList();
  const [typed, setTyped] = useState('');
  if (tripId === null) return <NoTrip title={t('jobs.all.title')} />;
  const wanted = typed.trim();
  const systems = (list?.systems ?? []).flatMap(({ system, jobs }) => {
    const left = jobs.filter(({ id, title }) => hasWords(`${id} ${title}`, wanted));
    return left.length === 0 ? [] : [{ system, jobs: left }];
  });
  const count = systems.reduce((sum, { jobs }) => sum + jobs.length, 0);
  return (
    <div className="jobs-sheet">
      <h1>{list === null ? t('jobs.all.title') : t('jobs.all.headline', { count })}</h1>
      <SearchField label={t('jobs.all.search')} value={typed} onChange={setTyped} />
      {refusal !== null && <Sentence>{refusal}</Sentence>}
      {list === null && refusal === null && <p className="quiet">{t('jobs.reading')}</p>}
      {list !== null && count === 0 && <Sentence>{t('jobs.all.none')}</Sentence>}
      <div className="systems">
        {systems.map(({ system, jobs }) => (
          <Block
            key={system}
            title={t(`people.system.${system}`)}
            aside={t('jobs.find.jobs', { count: jobs.length })}
          >
            <RowLinks to="/jobs/card" rows={jobs} />
          </Block>
        ))}
      </div>
    </div>
  );
}
