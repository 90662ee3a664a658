import { lazy } from 'react';
import { useTranslation } from 'react-i18next';
import { Redirect, Route, Switch } from 'wouter';
import { SubPlaces } from '../../shell/sub-places.tsx';
import words from '../../words/en-bags.json';
import { addWords } from '../../words/words.ts';
import { MusterSheet } from './muster/muster-sheet.tsx';
import './bags.css';

// Before the place or anything of it is drawn.
addWords(words);

const CountSheet = lazy(() => import('./muster/count-sheet.tsx').then((m) => ({ default: m.CountSheet })));
const CareSheet = lazy(() => import('./care/care-sheet.tsx').then((m) => ({ default: m.CareSheet })));
const MapSheet = lazy(() => import('./map/map-sheet.tsx').then((m) => ({ default: m.MapSheet })));

/** The bags on the road: counting the kit out and in, keeping it ready, and what lies in which pocket. */
export function BagsPlace() {
  const { t } = useTranslation();
  return (
    <>
      <SubPlaces
        sheets={[
          { to: '/bags/muster', label: t('bags.muster.title') },
          { to: '/bags/care', label: t('bags.care.title') },
          { to: '/bags/map', label: t('bags.map.title') },
        ]}
      />
      <Switch>
        <Route path="/bags/muster">
          <MusterSheet />
        </Route>
        <Route path="/bags/muster/:id">
          {({ id }) => <CountSheet key={id} musterId={decodeURIComponent(id)} />}
        </Route>
        <Route path="/bags/care">
          <CareSheet />
        </Route>
        <Route path="/bags/map">
          <MapSheet />
        </Route>
        <Route>
          <Redirect to="/bags/muster" />
        </Route>
      </Switch>
    </>
  );
}
