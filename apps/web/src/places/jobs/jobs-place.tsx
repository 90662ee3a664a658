import { lazy } from 'react';
import { useTranslation } from 'react-i18next';
import { Redirect, Route, Switch } from 'wouter';
import { SubPlaces } from '../../shell/sub-places.tsx';
import words from '../../words/en-jobs.json';
import { addWords } from '../../words/words.ts';
import { FindSheet } from './find/find-sheet.tsx';
import './jobs.css';

// Before the place or anything of it is drawn.
addWords(words);

const SymptomSheet = lazy(() =>
  import('./find/symptom-sheet.tsx').then((m) => ({ default: m.SymptomSheet })),
);
const AllJobsSheet = lazy(() =>
  import('./find/all-jobs-sheet.tsx').then((m) => ({ default: m.AllJobsSheet })),
);
const CardSheet = lazy(() => import('./card/card-sheet.tsx').then((m) => ({ default: m.CardSheet })));
const RepairsSheet = lazy(() =>
  import('./repairs/repairs-sheet.tsx').then((m) => ({ default: m.RepairsSheet })),
);
const RecordSheet = lazy(() => import('./repairs/done-sheet.tsx').then((m) => ({ default: m.DoneSheet })));
const WireSheet = lazy(() => import('./wire/wire-sheet.tsx').then((m) => ({ default: m.WireSheet })));

/** The roadside: from what is noticed to the card of a job, and what was done about it. For one gloved hand, at night. */
export function JobsPlace() {
  const { t } = useTranslation();
  return (
    <div className="jobs">
      <SubPlaces
        sheets={[
          { to: '/jobs/find', label: t('jobs.find.title') },
          { to: '/jobs/card', label: t('jobs.all.title') },
          { to: '/jobs/repairs', label: t('jobs.repairs.title') },
          { to: '/jobs/wire', label: t('jobs.wire.title') },
        ]}
      />
      <Switch>
        <Route path="/jobs/find">
          <FindSheet />
        </Route>
        <Route path="/jobs/find/:symptom/*?">
          {({ symptom, '*': said }) => <SymptomSheet key={symptom} symptom={symptom} said={said ?? ''} />}
        </Route>
        <Route path="/jobs/card">
          <AllJobsSheet />
        </Route>
        <Route path="/jobs/card/:job">{({ job }) => <CardSheet key={job} job={plain(job)} />}</Route>
        <Route path="/jobs/repairs">
          <RepairsSheet />
        </Route>
        <Route path="/jobs/repairs/:job">{({ job }) => <RecordSheet key={job} job={plain(job)} />}</Route>
        <Route path="/jobs/wire">
          <WireSheet />
        </Route>
        <Route>
          <Redirect to="/jobs/find" />
        </Route>
      </Switch>
    </div>
  );
}

/** An address may have been written by hand or by another program; what cannot be read names no job. */
function plain(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
