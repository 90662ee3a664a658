import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLocation } from 'wouter';
import { Button } from '../../../../look/button.tsx';
import { LinkButton } from '../../../../look/link-button.tsx';
import { chooseRows, orderRows } from '../choose-rows.ts';
import { ThingSheet } from '../thing/thing-sheet.tsx';
import { useMeaning } from '../use-meaning.ts';
import { useRows } from '../use-rows.ts';
import { ByHand } from './by-hand.tsx';
import { EmptyList } from './empty-list.tsx';
import { ListHead } from './list-head.tsx';
import { Sift } from './sift.tsx';
import { ThingList } from './thing-list.tsx';
import { useSifting } from './use-sifting.ts';
import './list-sheet.css';

/** Everything owned: one sentence, what to show, and a row for each. One thing may be laid open over it. */
export function ListSheet({ thing }: { thing: string | null }) {
  const { t } = useTranslation();
  const [, go] = useLocation();
  const found = useRows();
  const [sifting, change] = useSifting();
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const [byHand, setByHand] = useState(false);
  const search = useDeferredValue(sifting.search);
  const means = useMeaning(search);
  const { shown, order } = sifting;
  const ordered = useMemo(() => (found === null ? [] : orderRows(found.rows, order)), [found, order]);
  const lines = useMemo(
    () => (found === null ? [] : chooseRows(ordered, found.standings, { shown, search, means, open })),
    [found, ordered, shown, search, means, open],
  );
  const unfold = useCallback((id: string, isOpen: boolean): void => {
    setOpen((before) => {
      const next = new Set(before);
      if (isOpen) next.add(id);
      else next.delete(id);
      return next;
    });
  }, []);
  const openThing = useCallback(
    (id: string) => go(`/garage/belongings/thing/${encodeURIComponent(id)}`),
    [go],
  );
  return (
    <div className="list-sheet">
      <div className="list-top">
        <ListHead found={found} />
        <div className="acts list-acts">
          <LinkButton main to="/garage/belongings/paste">
            {t('belongings.toPaste')}
          </LinkButton>
          <LinkButton to="/garage/belongings/catalogue">{t('belongings.toCatalogue')}</LinkButton>
          <LinkButton to="/garage/belongings/weigh">{t('belongings.toWeigh')}</LinkButton>
          <Button onPress={() => setByHand(true)}>{t('belongings.toByHand')}</Button>
        </div>
      </div>
      {found !== null && found.rows.length === 0 ? (
        <EmptyList />
      ) : (
        <>
          <Sift sifting={sifting} onChange={change} count={lines.length} />
          {found !== null && lines.length === 0 ? (
            <p className="sentence">{t('belongings.noneFound')}</p>
          ) : (
            <ThingList lines={lines} open={open} onOpen={openThing} onUnfold={unfold} />
          )}
        </>
      )}
      <ByHand
        isOpen={byHand}
        onClose={(added) => {
          setByHand(false);
          if (added !== null) go(`/garage/belongings/thing/${added}`);
        }}
      />
      {thing !== null && found !== null && (
        <ThingSheet id={thing} found={found} onClose={() => go('/garage/belongings')} />
      )}
    </div>
  );
}
