import { lazy } from 'react';
import { useTranslation } from 'react-i18next';
import { Redirect, Route, Switch } from 'wouter';
import { SubPlaces } from '../../shell/sub-places.tsx';
import { BeginSheet } from './begin/begin-sheet.tsx';

const BelongingsSheet = lazy(() =>
  import('./belongings/belongings-sheet.tsx').then((m) => ({ default: m.BelongingsSheet })),
);
const TripSheet = lazy(() => import('./trip/trip-sheet.tsx').then((m) => ({ default: m.TripSheet })));
const PeopleSheet = lazy(() => import('./people/people-sheet.tsx').then((m) => ({ default: m.PeopleSheet })));
const RecordSheet = lazy(() => import('./record/record-sheet.tsx').then((m) => ({ default: m.RecordSheet })));
const SettingsSheet = lazy(() =>
  import('./settings/settings-sheet.tsx').then((m) => ({ default: m.SettingsSheet })),
);

/** Everything that is recorded: how to begin, what is owned, who travels and where, copies, and how this device shows it. */
export function GaragePlace() {
  const { t } = useTranslation();
  return (
    <>
      <SubPlaces
        sheets={[
          { to: '/garage/begin', label: t('begin.title') },
          { to: '/garage/belongings', label: t('belongings.title') },
          { to: '/garage/trip', label: t('trip.title') },
          { to: '/garage/people', label: t('people.title') },
          { to: '/garage/record', label: t('record.title') },
          { to: '/garage/settings', label: t('settings.title') },
        ]}
      />
      <Switch>
        <Route path="/garage/belongings/*?">
          <BelongingsSheet />
        </Route>
        <Route path="/garage/trip/*?">
          <TripSheet />
        </Route>
        <Route path="/garage/people">
          <PeopleSheet />
        </Route>
        <Route path="/garage/record">
          <RecordSheet />
        </Route>
        <Route path="/garage/settings">
          <SettingsSheet />
        </Route>
        <Route path="/garage/begin">
          <BeginSheet />
        </Route>
        <Route>
          <Redirect to="/garage/begin" />
        </Route>
      </Switch>
    </>
  );
}
