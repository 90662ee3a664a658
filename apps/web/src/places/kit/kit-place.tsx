import { lazy } from 'react';
import { useTranslation } from 'react-i18next';
import { Redirect, Route, Switch } from 'wouter';
import { SubPlaces } from '../../shell/sub-places.tsx';
import { NeedsPlan } from './needs-plan.tsx';
import { KitSheet } from './sheet/kit-sheet.tsx';

const GapsSheet = lazy(() => import('./gaps/gaps-sheet.tsx').then((m) => ({ default: m.GapsSheet })));
const LimitsSheet = lazy(() => import('./limits/limits-sheet.tsx').then((m) => ({ default: m.LimitsSheet })));
const CompareSheet = lazy(() =>
  import('./compare/compare-sheet.tsx').then((m) => ({ default: m.CompareSheet })),
);
const SureSheet = lazy(() => import('./sure/sure-sheet.tsx').then((m) => ({ default: m.SureSheet })));
const PrintSheet = lazy(() => import('./print/print-sheet.tsx').then((m) => ({ default: m.PrintSheet })));

/** The answer and everything that changes or explains it: limits, gaps, comparison, paper. */
export function KitPlace() {
  const { t } = useTranslation();
  return (
    <>
      <SubPlaces
        sheets={[
          { to: '/kit/answer', label: t('kit.title') },
          { to: '/kit/limits', label: t('kit.limits') },
          { to: '/kit/gaps', label: t('gaps.title') },
          { to: '/kit/sure', label: t('sure.title') },
          { to: '/kit/compare', label: t('compare.title') },
          { to: '/kit/print', label: t('print.title') },
        ]}
      />
      <Switch>
        <Route path="/kit/answer">
          <NeedsPlan>{(answer) => <KitSheet answer={answer} />}</NeedsPlan>
        </Route>
        <Route path="/kit/limits">
          <LimitsSheet />
        </Route>
        <Route path="/kit/gaps/:failure?">
          {({ failure }) => (
            <NeedsPlan>
              {(answer) => (
                <GapsSheet
                  answer={answer}
                  chosen={failure === undefined ? null : decodeURIComponent(failure)}
                />
              )}
            </NeedsPlan>
          )}
        </Route>
        <Route path="/kit/sure">
          <NeedsPlan>{(answer) => <SureSheet answer={answer} />}</NeedsPlan>
        </Route>
        <Route path="/kit/compare">
          <NeedsPlan>{(answer) => <CompareSheet answer={answer} />}</NeedsPlan>
        </Route>
        <Route path="/kit/print">
          <NeedsPlan>{(answer) => <PrintSheet answer={answer} />}</NeedsPlan>
        </Route>
        <Route>
          <Redirect to="/kit/answer" />
        </Route>
      </Switch>
    </>
  );
}
