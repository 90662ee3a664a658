import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { Button } from '../../../look/button.tsx';
import { Caution } from '../../../look/parts.tsx';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { recordFitting } from '../fittings/record-fitting.ts';
import { entryOf, nearestOf, sizeText, typedOf } from '../fittings/size-text.ts';
import { PhotoBox } from '../photo/photo-box.tsx';
import { PhotoButton } from '../photo/photo-button.tsx';
import { photoKey } from '../photo/photo-key.ts';
import { usePhoto } from '../photo/use-photo.ts';
import { useFacts } from '../use-facts.ts';
import { dangerOf, lookAt } from './look-at.ts';
import { NumberPad } from './number-pad.tsx';

/** One place of the walk: where, what to look at, what it is thought to be, and the pad. */
export function WalkPlace({
  vehicle,
  row,
  onDone,
  onSkip,
  onOutOfReach,
}: {
  vehicle: string;
  row: FittingRow;
  onDone: () => void;
  onSkip: () => void;
  onOutOfReach: () => void;
}) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { today } = useStores();
  const facts = useFacts();
  const photo = usePhoto(photoKey(vehicle, row));
  const [typed, setTyped] = useState('');
  const [unit, setUnit] = useState<'mm' | 'in'>(typedOf(row.size).unit);
  const entry = entryOf(row.drive);
  const size = sizeText(typed, entry, unit);
  const odd = size !== null && facts !== null && !facts.headSizes.includes(size);
  const near = size === null || facts === null ? null : nearestOf(size, facts.headSizes);
  const title = row.position === null ? row.title : `${row.title}, ${row.position}`;
  const danger = dangerOf(row, t);
  const by = Object.values(garage.people)[0]?.name;
  const record = (measured: string) => {
    onDone();
    void edit(t('fittings.edited', { title, size: measured }), (g) =>
      recordFitting(g, vehicle, row, {
        size: measured,
        drive: row.drive,
        status: 'measured',
        on: dateOf(today()),
        ...(by === undefined ? {} : { by }),
        confirmed: facts !== null && !facts.headSizes.includes(measured),
      }),
    );
  };
  const shown = typed === '' ? t('walk.none') : (size ?? typed);
  return (
    <div className="walk-place">
      <div className="walk-what">
        <div className="walk-top">
          <div>
            <p className="quiet">{t(`walk.area.${row.area}`)}</p>
            <h1>{title}</h1>
          </div>
          {photo.url === null && <PhotoButton photo={photo} />}
        </div>
        {danger !== null && (
          <Caution>
            <p>{danger}</p>
          </Caution>
        )}
        <ul className="walk-look">
          {lookAt(row, t).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        <PhotoBox photo={photo} title={title} />
      </div>
      <div className="walk-hand">
        <div className="walk-value">
          <p>
            {t(`walk.thought.${row.status}`)}{' '}
            <span className={row.status === 'assumed' ? 'decides assumed' : 'decides'}>{row.size}</span>
          </p>
          <p className="walk-typed" role="status" aria-label={t('walk.typed')}>
            {shown}
          </p>
          {entry === 'width' && (
            <Button
              onPress={() => {
                setUnit(unit === 'mm' ? 'in' : 'mm');
                setTyped('');
              }}
            >
              {unit === 'mm' ? t('walk.toInches') : t('walk.toMillimetres')}
            </Button>
          )}
        </div>
        <NumberPad value={typed} onChange={setTyped} fraction={entry === 'width' && unit === 'in'} />
        <p className={odd ? 'walk-odd' : 'hidden-text'} role="alert">
          {odd &&
            `${t('fittings.odd', { size })}${near === null ? '' : ` ${t('fittings.oddNear', { near })}`}`}
        </p>
        <div className="walk-acts">
          {size === null ? (
            <Button main onPress={() => record(row.size)}>
              {t('walk.same', { size: row.size })}
            </Button>
          ) : (
            <Button main onPress={() => record(size)}>
              {odd ? t('walk.oddMeasured', { size }) : t('walk.measured', { size })}
            </Button>
          )}
          <Button onPress={onOutOfReach}>{t('walk.outOfReach')}</Button>
          <Button onPress={onSkip}>{t('walk.skip')}</Button>
        </div>
      </div>
    </div>
  );
}
