import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { More } from '../../../look/more.tsx';
import { Block, Sentence } from '../../../look/parts.tsx';
import { SearchField } from '../../../look/search-field.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { JobsReply } from '../../../worker/jobs/protocol.ts';
import { readLastCard } from '../last-card.ts';
import { NoTrip } from '../no-trip.tsx';
import { RowLink, RowLinks } from '../row-link.tsx';
import { hasWords } from './find-words.ts';
import { useJobList } from './use-job-list.ts';

type List = Extract<JobsReply, { kind: 'jobs/list' }>;

/** The first list a driver chooses from: what is noticed, by where. A word finds it too, and finds jobs besides. */
export function FindSheet() {
  const { t } = useTranslation();
  const { tripId } = useTrip();
  const { list, refusal } = useJobList();
  const [typed, setTyped] = useState('');
  const last = readLastCard();
  if (tripId === null) return <NoTrip title={t('jobs.find.headline')} />;
  const wanted = typed.trim();
  return (
    <div className="jobs-sheet">
      <h1>{t('jobs.find.headline')}</h1>
      {last !== null && (
        <RowLink to={`/jobs/card/${last.job}`}>
          {t('jobs.find.last')} <b>{last.title}</b>
        </RowLink>
      )}
      <SearchField label={t('jobs.find.search')} value={typed} onChange={setTyped} />
      {refusal !== null && <Sentence>{refusal}</Sentence>}
      {list === null ? (
        refusal === null && <p className="quiet">{t('jobs.reading')}</p>
      ) : wanted === '' ? (
        <Areas list={list} />
      ) : (
        <Found list={list} typed={wanted} />
      )}
    </div>
  );
}

function Areas({ list }: { list: List }) {
  const { t } = useTranslation();
  return (
    <ul className="areas">
      {list.symptoms.map(({ area, symptoms }) => (
        <li key={area}>
          <More title={t(`jobs.area.${area}`)} summary={t('jobs.find.signs', { count: symptoms.length })}>
            <RowLinks to="/jobs/find" rows={symptoms} />
          </More>
        </li>
      ))}
    </ul>
  );
}

function Found({ list, typed }: { list: List; typed: string }) {
  const { t } = useTranslation();
  const signs = list.symptoms.flatMap(({ symptoms }) => symptoms.filter((s) => hasWords(s.title, typed)));
  const jobs = list.systems.flatMap((system) =>
    system.jobs.filter(({ id, title }) => hasWords(`${id} ${title}`, typed)),
  );
  return (
    <>
      <p className="small quiet" role="status">
        {t('jobs.find.found', {
          signs: t('jobs.find.signs', { count: signs.length }),
          jobs: t('jobs.find.jobs', { count: jobs.length }),
        })}
      </p>
      {signs.length > 0 && (
        <Block title={t('jobs.find.noticed')}>
          <RowLinks to="/jobs/find" rows={signs} />
        </Block>
      )}
      {jobs.length > 0 && (
        <Block title={t('jobs.find.toDo')}>
          <RowLinks to="/jobs/card" rows={jobs} />
        </Block>
      )}
    </>
  );
}
