import { Suspense, useEffect } from 'react';
import { useTranslation } from 'react-i18next';
import { Redirect, Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { useQuestion } from './shell/aim.ts';
import { keepKit } from './shell/kept-kit.ts';
import { PLACES } from './shell/places.ts';
import { Sheet } from './shell/sheet.tsx';
import { usePlan, useRecord, useSettings, useStores } from './shell/stores.tsx';
import { useTrip } from './shell/use-trip.ts';

export function App() {
  const { t } = useTranslation();
  usePlanning();
  useKeptKit();
  return (
    <Router hook={useHashLocation}>
      <Sheet>
        <Suspense fallback={<p className="quiet">{t('app.opening')}</p>}>
          <Switch>
            {PLACES.map(({ id, screen: Screen }) => (
              <Route key={id} path={`/${id}/*?`}>
                <Screen />
              </Route>
            ))}
            <Route>
              <Redirect to="/garage" />
            </Route>
          </Switch>
        </Suspense>
      </Sheet>
    </Router>
  );
}

/** Every change of the record, or of the trip that is open, is planned for at once; so is a change of whose words are used. */
function usePlanning(): void {
  const { desk } = useStores();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const { wording } = useSettings();
  const question = useQuestion();
  useEffect(() => {
    desk.ask(tripId === null ? null : { garage, trip: tripId, question });
  }, [desk, garage, tripId, wording, question]);
}

/** The kit of the newest answer stays at hand for the roadside, where nobody waits for a proof. */
function useKeptKit(): void {
  const { answer, fresh } = usePlan();
  useEffect(() => {
    if (answer !== null && fresh) keepKit(answer.trip.id, answer.kit.items);
  }, [answer, fresh]);
}
