import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import type { Walk } from '@waymend/planner/views/walk-order';
import { Sentence } from '../../../look/parts.tsx';
import { useFittings } from '../use-fittings.ts';
import { NoVehicle, useChosenVehicle, VehicleChoice } from '../vehicle-choice.tsx';
import { keyOf, path, stillToDo } from './next-place.ts';
import { readAside, writeAside } from './set-aside.ts';
import type { SetAside } from './set-aside.ts';
import { WalkPlace } from './walk-place.tsx';
import './walk.css';

/** Walk round: one place after another, with what to look at and a pad for one gloved hand. */
export function WalkSheet() {
  const { t } = useTranslation();
  const [vehicle, setVehicle] = useChosenVehicle();
  const { walk, refusal } = useFittings(vehicle);
  if (vehicle === null) return <NoVehicle title={t('walk.title')} />;
  if (walk === null)
    return (
      <>
        <h1>{t('walk.title')}</h1>
        {refusal === null ? <p className="quiet">{t('fittings.reading')}</p> : <Sentence>{refusal}</Sentence>}
      </>
    );
  return (
    <div className="walk">
      <VehicleChoice value={vehicle} onChange={setVehicle} />
      <Round key={vehicle} vehicle={vehicle} walk={walk} />
    </div>
  );
}

function Round({ vehicle, walk }: { vehicle: string; walk: Walk }) {
  const { t } = useTranslation();
  const [aside, setAside] = useState(() => readAside(vehicle));
  // What has just been recorded is done, although the worker's next list is still on its way.
  const [done, setDone] = useState<readonly string[]>([]);
  const leave = (next: SetAside) => {
    setAside(next);
    writeAside(vehicle, next);
  };
  const all = path(walk);
  const left = stillToDo(walk, aside).filter((row) => !done.includes(keyOf(row)));
  const measured = all.filter((r) => r.status === 'measured' || done.includes(keyOf(r))).length;
  const row = left[0];
  if (row === undefined)
    return (
      <>
        <h1>{t('walk.finished', { count: all.length })}</h1>
        <p>
          <Link href="/vehicle/sizes" className="act as-link">
            {t('walk.toSizes')}
          </Link>
        </p>
      </>
    );
  const key = keyOf(row);
  const first = walk.first.some((r) => keyOf(r) === key);
  return (
    <>
      <header className="walk-head">
        <p role="status" className="decides">
          {t('walk.progress', { measured, count: all.length })}
        </p>
        <p className="small quiet">
          {first
            ? t('walk.firstRound', {
                count: left.filter((r) => walk.first.some((f) => keyOf(f) === keyOf(r))).length,
              })
            : t('walk.secondRound')}
          {aside.skipped.length + aside.outOfReach.length > 0 &&
            ` ${t('walk.aside', { count: new Set([...aside.skipped, ...aside.outOfReach]).size })}`}
        </p>
      </header>
      <WalkPlace
        key={key}
        vehicle={vehicle}
        row={row}
        onDone={() => setDone([...done, key])}
        onSkip={() => leave({ ...aside, skipped: [...aside.skipped.filter((k) => k !== key), key] })}
        onOutOfReach={() =>
          leave({
            skipped: aside.skipped.filter((k) => k !== key),
            outOfReach: [...aside.outOfReach.filter((k) => k !== key), key],
          })
        }
      />
    </>
  );
}
