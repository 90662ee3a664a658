import { useEffect, useRef, useSyncExternalStore } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { Block } from '../../../look/parts.tsx';
import { forgetDemo, isDemoAskedFor, subscribeToDemo } from '../../../shell/asked-for-demo.ts';
import { usePlan, useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { OtherWays } from './other-ways.tsx';
import { PatternChoice } from './pattern-choice.tsx';
import { Plate } from './plate.tsx';
import { isEmpty, wayOf } from './the-way.ts';
import { useOpening } from './use-opening.ts';
import { WayList, WHERE } from './way-list.tsx';
import './begin.css';

/** Where this garage stands, and every way on from here. */
export function BeginSheet() {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { answer } = usePlan();
  const { tripId, vehicleId, vehicle } = useTrip();
  const opening = useOpening();
  const heading = useRef<HTMLHeadingElement>(null);
  const empty = isEmpty(garage);
  useDemo(empty, opening.openDemo);

  const steps = wayOf(garage, tripId, answer !== null);
  const next = steps.find(({ isNext }) => isNext)?.id;
  const headline = empty ? t('begin.headlineEmpty') : t(`begin.headline.${next ?? 'nothing'}`);
  return (
    <div className="begin">
      <header className="begin-head">
        <h1 ref={heading} tabIndex={-1}>
          {headline}
        </h1>
        <WayList steps={steps} />
        {/* Its room is there before it is, so that nothing moves when a garage arrives. */}
        <div className="begin-on-room">
          {!empty && (
            <Link href={WHERE[next ?? 'kit']} className="act main begin-on">
              {t(`begin.on.${next ?? 'kit'}`)}
            </Link>
          )}
        </div>
      </header>
      {vehicle?.ratingsAssumed === true && vehicleId !== null && (
        <Plate vehicleId={vehicleId} vehicle={vehicle} />
      )}
      <Block title={empty ? t('begin.patternTitle') : t('begin.patternMore')} aside={t('begin.patternScale')}>
        <p className="prose begin-two-lines">{empty ? t('begin.patternWhat') : t('begin.patternMoreWhat')}</p>
        <PatternChoice onStarted={() => heading.current?.focus()} />
      </Block>
      <div className="begin-pair">
        <OtherWays opening={opening} isMain={empty} />
      </div>
    </div>
  );
}

/** An address that ends in '?demo' opens the demo, but never over a record that has something in it. */
function useDemo(empty: boolean, open: () => Promise<void>): void {
  const asked = useSyncExternalStore(subscribeToDemo, isDemoAskedFor);
  useEffect(() => {
    if (!asked) return;
    forgetDemo();
    if (empty) void open();
  }, [asked, empty, open]);
}
