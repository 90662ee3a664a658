import type { Garage } from '@waymend/garage/record/schema';
import type { StowAnswer, StowedItem } from '@waymend/planner/answer/stow-answer';
import type { Question } from '@waymend/planner/plan/plan-trip';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { More } from '../../../look/more.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { NeedsPlan } from '../../kit/needs-plan.tsx';
import { usePlanAsk } from '../use-plan-ask.ts';
import { useThings } from '../use-things.ts';
import { BagDialog } from './bag-dialog.tsx';
import { BerthBlock } from './berth-block.tsx';
import { putAway, takeAllOut } from './map-acts.ts';
import { PieceDialog } from './piece-dialog.tsx';
import './map.css';

const stowRequest = (garage: Garage, trip: string, question: Question) =>
  ({ kind: 'bags/stow', garage, trip, question }) as const;

/** What lies in which pocket of which bag, in which berth; and the bags themselves. */
export function MapSheet() {
  return <NeedsPlan>{() => <PocketMapSheet />}</NeedsPlan>;
}

function PocketMapSheet() {
  const { t } = useTranslation();
  const { reply, fresh } = usePlanAsk(stowRequest);
  if (reply?.kind === 'bags/stow') return <Stowed stow={reply.stow} fresh={fresh} />;
  return (
    <div className="bags-sheet waiting">
      <h1>{t('bags.map.title')}</h1>
      <p role="status">{reply?.kind === 'refused' ? reply.refusals[0]?.message : t('bags.map.asking')}</p>
    </div>
  );
}

function Stowed({ stow, fresh }: { stow: StowAnswer; fresh: boolean }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { vehicleId } = useTrip();
  const things = useThings();
  const [chosen, setChosen] = useState<string | null>(null);
  const [bag, setBag] = useState<{ readonly id: string | null } | null>(null);
  const inBags = stow.bags.reduce(
    (sum, b) => sum + b.items.length + b.pockets.reduce((n, p) => n + p.items.length, 0),
    0,
  );
  const loose = stow.berths.reduce((sum, berth) => sum + berth.loose.length, 0);
  const item = itemOf(stow, chosen);
  const choose = ({ id }: StowedItem): void => setChosen(id);
  const anyPut = Object.values(garage.belongings).some((thing) => thing.bag !== undefined);
  return (
    <div className="bags-sheet">
      <div className="map-head">
        <h1>{t('bags.map.headline', { pieces: inBags, count: stow.bags.length })}</h1>
        <p role="status">
          {t('bags.map.loosePieces', { count: loose })}{' '}
          {fresh ? t(stow.status === 'proven' ? 'bags.map.proven' : 'bags.map.within') : t('bags.map.again')}
        </p>
        {stow.proposed && <p className="decides">{t('bags.map.proposedBags')}</p>}
      </div>
      {stow.broken.length > 0 && (
        <More title={t('bags.map.broken')} summary={t('bags.map.brokenCount', { count: stow.broken.length })}>
          <ul className="plain-rows">
            {stow.broken.map((b, n) => (
              <li key={`${b.rule} ${n}`}>{b.sentence}</li>
            ))}
          </ul>
        </More>
      )}
      <More title={t('bags.map.first')} summary={t('bags.map.firstCount', { count: stow.first.length })}>
        <ol className="plain-rows">
          {stow.first.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ol>
      </More>
      <div className="acts">
        <Button
          main
          isDisabled={!fresh}
          onPress={() => {
            const ids = new Map<string, string>();
            let n = 0;
            const again = (wish: string): string => {
              const key = `${n++} ${wish}`;
              const id = ids.get(key) ?? freshId(wish);
              ids.set(key, id);
              return id;
            };
            void edit(t('bags.map.stepAway'), (g) => {
              n = 0;
              return putAway(g, stow, again);
            });
          }}
        >
          {t('bags.map.putAway')}
        </Button>
        <Button isDisabled={!anyPut} onPress={() => void edit(t('bags.map.stepOut'), takeAllOut)}>
          {t('bags.map.takeOut')}
        </Button>
        <Button onPress={() => setBag({ id: null })}>{t('bags.map.newBag')}</Button>
      </div>
      {stow.berths.map((berth) => (
        <BerthBlock
          key={berth.id}
          berth={berth}
          bags={stow.bags.filter((one) => one.berth === berth.id)}
          things={things}
          chosen={chosen}
          onChoose={choose}
          onBag={stow.proposed ? null : (id) => setBag({ id })}
        />
      ))}
      {stow.emptyBags.length > 0 && (
        <section>
          <h2>{t('bags.map.emptyBags')}</h2>
          <ul className="piece-words">
            {stow.emptyBags.map(({ id, name }) => (
              <li key={id}>
                <Button onPress={() => setBag({ id })} label={t('bags.map.changeBag', { name })}>
                  {name}
                </Button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="small quiet prose">{t('bags.map.caution')}</p>
      {item !== null && <PieceDialog item={item} stow={stow} onClose={() => setChosen(null)} />}
      {bag !== null && vehicleId !== null && (
        <BagDialog id={bag.id} vehicle={vehicleId} onClose={() => setBag(null)} />
      )}
    </div>
  );
}

/** The piece as the newest stowage has it: a dialog stays open while it is stowed again. */
function itemOf(stow: StowAnswer, id: string | null): StowedItem | null {
  const all = [
    ...stow.bags.flatMap((b) => [...b.items, ...b.pockets.flatMap((pocket) => pocket.items)]),
    ...stow.berths.flatMap(({ loose }) => loose),
  ];
  return all.find((one) => one.id === id) ?? null;
}
