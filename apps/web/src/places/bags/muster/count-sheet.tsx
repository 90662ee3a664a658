import type { Garage } from '@waymend/garage/record/schema';
import { closeMuster } from '@waymend/garage/road/close-muster';
import { countInAllBut } from '@waymend/garage/road/muster';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Redirect } from 'wouter';
import { dayWords } from '../../../format/day-words.ts';
import { Button } from '../../../look/button.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { useActing } from '../use-acting.ts';
import { stockOfThings, useThings } from '../use-things.ts';
import { seal, tick, tickAll } from './acts.ts';
import { AllButDialog } from './all-but-dialog.tsx';
import { BagBlock } from './bag-block.tsx';
import { ClosedBlock } from './closed-block.tsx';
import { FateDialog } from './fate-dialog.tsx';
import type { MusterRow } from './groups.ts';
import { musterBags } from './groups.ts';
import { PieceBlocks } from './piece-blocks.tsx';
import { useChanged } from './use-changed.ts';

/** Names of what is out that the headline says. */
const NAMED = 3;

/** One muster: counted in by big presses, closed when nothing is unaccounted for; then what it changed. */
export function CountSheet({ musterId }: { musterId: string }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { today } = useStores();
  const things = useThings();
  const { refused, act } = useActing();
  const changing = useChanged();
  const [open, setOpen] = useState<string | null>(null);
  const [allBut, setAllBut] = useState(false);
  const muster = garage.musters[musterId];
  if (muster === undefined) return <Redirect to="/bags/muster" />;
  if (things === null)
    return (
      <div className="bags-sheet waiting">
        <h1>{t('bags.muster.title')}</h1>
        <p role="status">{t('bags.reading')}</p>
      </div>
    );
  const stockOf = stockOfThings(garage, things);
  const bags = musterBags(garage, musterId, things);
  const rows = bags.flatMap((bag) => bag.pockets.flatMap((pocket) => pocket.rows));
  const out = rows.reduce((sum, row) => sum + row.out, 0);
  const missing = rows.filter((row) => row.missing > 0);
  const accounted = out - missing.reduce((sum, row) => sum + row.missing, 0);
  const named = missing.slice(0, NAMED).map(({ name }) => name);
  const back = (row: MusterRow): void => {
    const done = act(t('bags.muster.stepBack', { name: row.name }), (g) => tick(g, row.id, 'back', stockOf));
    if (done && row.parts.length > 0) setOpen(row.id);
  };
  const close = (): void => {
    const on = dateOf(today());
    // The same ids each time the step is worked out, so that what was asked about is what is recorded.
    const ids: string[] = [];
    const apply = (g: Garage) => {
      let n = 0;
      return closeMuster(g, musterId, on, stockOf, (wish) => (ids[n++] ??= freshId(wish)));
    };
    const closed = apply(garage);
    const done = act(t('bags.muster.stepClose'), apply);
    if (done && closed.ok && muster.trip !== undefined && changing.canAsk(muster.trip))
      changing.ask(garage, closed.value, muster.trip);
  };
  const shown = rows.find(({ id }) => id === open);
  if (muster.closedOn !== undefined)
    return (
      <div className="bags-sheet">
        <h1>{t('bags.closed.headline', { on: dayWords(muster.closedOn) })}</h1>
        <PieceBlocks rows={rows} />
        <ClosedBlock rows={rows} changed={changing.changed} />
      </div>
    );
  return (
    <div className="bags-sheet">
      <div className="muster-head">
        <h1>{t('bags.muster.headline', { n: accounted, of: out })}</h1>
        <p className="quiet" role="status">
          {missing.length === 0
            ? t('bags.muster.nothingOut')
            : missing.length > NAMED
              ? t('bags.muster.stillOutMore', { names: named.join(', '), count: missing.length - NAMED })
              : t('bags.muster.stillOut', { names: named.join(', ') })}
        </p>
        <PieceBlocks rows={rows} />
      </div>
      {bags.map((bag) => (
        <BagBlock
          key={bag.bag ?? ''}
          of={bag}
          onBack={back}
          onOther={(row) => setOpen(row.id)}
          onAll={() =>
            act(t('bags.muster.stepBag', { bag: bag.name ?? t('bags.noBag') }), (g) =>
              tickAll(
                g,
                bag.pockets.flatMap((pocket) => pocket.rows.map(({ id }) => id)),
                stockOf,
              ),
            )
          }
          onSeal={() => {
            const ids = new Map(
              bag.pockets.flatMap((p) => p.rows.map((row) => [row.belonging, row.id] as const)),
            );
            act(t('bags.muster.stepSeal', { bag: bag.name ?? '' }), (g) =>
              seal(g, musterId, bag.bag ?? '', (belonging) => ids.get(belonging) ?? freshId(belonging)),
            );
          }}
        />
      ))}
      <div className="dock">
        {refused !== null && (
          <p role="alert" className="decides">
            {refused}
          </p>
        )}
        <div className="dock-acts">
          {missing.length > 0 && <Button onPress={() => setAllBut(true)}>{t('bags.muster.allBut')}</Button>}
          <Button main onPress={close}>
            {t('bags.muster.close')}
          </Button>
        </div>
      </div>
      {shown !== undefined && (
        <FateDialog row={shown} stockOf={stockOf} refused={refused} act={act} onClose={() => setOpen(null)} />
      )}
      {allBut && (
        <AllButDialog
          rows={missing}
          onClose={() => setAllBut(false)}
          onDone={(except) => {
            setAllBut(false);
            act(t('bags.muster.stepAllBut'), (g) => countInAllBut(g, musterId, except, stockOf));
          }}
        />
      )}
    </div>
  );
}
