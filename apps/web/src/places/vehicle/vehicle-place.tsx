import { lazy } from 'react';
import { useTranslation } from 'react-i18next';
import { Redirect, Route, Switch } from 'wouter';
import { SubPlaces } from '../../shell/sub-places.tsx';
import { LoadSheet } from './load/load-sheet.tsx';
import './vehicle.css';

const SizesSheet = lazy(() => import('./sizes/sizes-sheet.tsx').then((m) => ({ default: m.SizesSheet })));
const FittingsSheet = lazy(() =>
  import('./fittings/fittings-sheet.tsx').then((m) => ({ default: m.FittingsSheet })),
);
const WalkSheet = lazy(() => import('./walk/walk-sheet.tsx').then((m) => ({ default: m.WalkSheet })));
const DataSheet = lazy(() => import('./data/data-sheet.tsx').then((m) => ({ default: m.DataSheet })));

/** The vehicle: what it carries where, what its fasteners take, and what its plates say. */
export function VehiclePlace() {
  const { t } = useTranslation();
  return (
    <>
      <SubPlaces
        sheets={[
          { to: '/vehicle/load', label: t('load.title') },
          { to: '/vehicle/sizes', label: t('rail.title') },
          { to: '/vehicle/fittings', label: t('fittings.title') },
          { to: '/vehicle/walk', label: t('walk.title') },
          { to: '/vehicle/data', label: t('vehicle.data') },
        ]}
      />
      <Switch>
        <Route path="/vehicle/load">
          <LoadSheet />
        </Route>
        <Route path="/vehicle/sizes">
          <SizesSheet />
        </Route>
        <Route path="/vehicle/fittings">
          <FittingsSheet />
        </Route>
        <Route path="/vehicle/walk">
          <WalkSheet />
        </Route>
        <Route path="/vehicle/data">
          <DataSheet />
        </Route>
        <Route>
          <Redirect to="/vehicle/load" />
        </Route>
      </Switch>
    </>
  );
}
