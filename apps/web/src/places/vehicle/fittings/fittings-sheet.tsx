import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { Button } from '../../../look/button.tsx';
import { Choice, TextField } from '../../../look/field.tsx';
import { Sentence } from '../../../look/parts.tsx';
import { useFittings } from '../use-fittings.ts';
import { NoVehicle, useChosenVehicle, VehicleChoice } from '../vehicle-choice.tsx';
import { AddPlace } from './add-place.tsx';
import { EditFitting } from './edit-fitting.tsx';
import { FittingLine } from './fitting-line.tsx';
import './fittings.css';

type StatusFilter = 'all' | 'assumed' | 'read' | 'measured';
type AreaFilter = 'all' | FittingRow['area'];

const AREAS = ['front-axle', 'engine-bay', 'underbody', 'rear', 'wheels', 'accessories'] as const;
/** Lines drawn before somebody asks for more. */
const SHOWN = 40;

/** Fittings: every place of the vehicle, what it takes, and how sure that is. */
export function FittingsSheet() {
  const { t } = useTranslation();
  const [vehicle, setVehicle] = useChosenVehicle();
  const { rows, refusal } = useFittings(vehicle);
  const [status, setStatus] = useState<StatusFilter>('all');
  const [area, setArea] = useState<AreaFilter>('all');
  const [words, setWords] = useState('');
  const [shown, setShown] = useState(SHOWN);
  const [open, setOpen] = useState<{ readonly place: string; readonly position: string | null } | null>(null);
  const [isAdding, setAdding] = useState(false);
  if (vehicle === null) return <NoVehicle title={t('fittings.title')} />;
  if (rows === null)
    return (
      <>
        <h1>{t('fittings.title')}</h1>
        {refusal === null ? <p className="quiet">{t('fittings.reading')}</p> : <Sentence>{refusal}</Sentence>}
      </>
    );
  const measured = rows.filter((r) => r.status === 'measured').length;
  const found = rows.filter(
    (r) =>
      (status === 'all' || r.status === status) &&
      (area === 'all' || r.area === area) &&
      `${r.title} ${r.position ?? ''} ${r.size}`.toLowerCase().includes(words.trim().toLowerCase()),
  );
  const opened =
    open === null ? null : (rows.find((r) => r.place === open.place && r.position === open.position) ?? null);
  return (
    <div className="fittings">
      <header>
        <h1>{t('fittings.headline', { measured, count: rows.length })}</h1>
        <p className="quiet">{t('fittings.what')}</p>
      </header>
      <div className="fields">
        <VehicleChoice value={vehicle} onChange={setVehicle} />
        <TextField label={t('fittings.find')} value={words} onChange={setWords} />
        <Choice
          label={t('fittings.sureness')}
          value={status}
          onChange={setStatus}
          options={(['all', 'assumed', 'read', 'measured'] as const).map((id) => ({
            id,
            label: id === 'all' ? t('fittings.all') : t(`rail.status.${id}`),
          }))}
        />
        <Choice
          label={t('fittings.where')}
          value={area}
          onChange={setArea}
          options={(['all', ...AREAS] as const).map((id) => ({
            id,
            label: id === 'all' ? t('fittings.all') : t(`walk.area.${id}`),
          }))}
        />
      </div>
      <p role="status" className="quiet">
        {t('fittings.found', { count: found.length })}
      </p>
      <ul className="rows">
        {found.slice(0, shown).map((row) => (
          <FittingLine
            key={row.id}
            row={row}
            onOpen={() => setOpen({ place: row.place, position: row.position })}
          />
        ))}
      </ul>
      {found.length > shown && (
        <Button onPress={() => setShown(shown + SHOWN)}>
          {t('fittings.more', { count: found.length - shown })}
        </Button>
      )}
      <div className="acts">
        <Button onPress={() => setAdding(true)}>{t('fittings.add.open')}</Button>
      </div>
      {isAdding && (
        <AddPlace
          vehicle={vehicle}
          rows={rows}
          onClose={() => setAdding(false)}
          onAdded={(added) => {
            setAdding(false);
            setOpen(added);
          }}
        />
      )}
      {opened !== null && (
        <EditFitting key={opened.id} vehicle={vehicle} row={opened} onClose={() => setOpen(null)} />
      )}
    </div>
  );
}
