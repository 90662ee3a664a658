import { lazy } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import { ListSheet } from './list/list-sheet.tsx';

const PasteSheet = lazy(() => import('./paste/paste-sheet.tsx').then((m) => ({ default: m.PasteSheet })));
const CatalogueSheet = lazy(() =>
  import('./catalogue/catalogue-sheet.tsx').then((m) => ({ default: m.CatalogueSheet })),
);
const WeighSheet = lazy(() => import('./weigh/weigh-sheet.tsx').then((m) => ({ default: m.WeighSheet })));

/** What is owned and what is for sale: the list, and the ways things get into it. */
export function BelongingsSheet() {
  return (
    <Switch>
      <Route path="/garage/belongings/paste">
        <PasteSheet />
      </Route>
      <Route path="/garage/belongings/catalogue">
        <CatalogueSheet />
      </Route>
      <Route path="/garage/belongings/weigh">
        <WeighSheet />
      </Route>
      <Route path="/garage/belongings/thing/:id">
        {({ id }) => <ListSheet thing={decodeURIComponent(id)} />}
      </Route>
      <Route path="/garage/belongings">
        <ListSheet thing={null} />
      </Route>
      <Route>
        <Redirect to="/garage/belongings" />
      </Route>
    </Switch>
  );
}
