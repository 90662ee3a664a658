import { ACCESSES, DRIVES } from '@waymend/catalogue/shape/words';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { fieldUnit } from '../../../format/field-units.ts';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { Choice, TextField } from '../../../look/field.tsx';
import { Sentence } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { useRecord, useSettings, useStores } from '../../../shell/stores.tsx';
import { removeFitting } from '../edits.ts';
import { PhotoBox } from '../photo/photo-box.tsx';
import { PhotoButton } from '../photo/photo-button.tsx';
import { photoKey } from '../photo/photo-key.ts';
import { usePhoto } from '../photo/use-photo.ts';
import { useFacts } from '../use-facts.ts';
import { dateOf } from '../../../shell/date-of.ts';
import { recordFitting } from './record-fitting.ts';
import { entryOf, nearestOf, sizeText, typedOf } from './size-text.ts';

/** The form of one place. Nothing is recorded until a button says what kind of knowledge it is. */
export function EditFitting({
  vehicle,
  row,
  onClose,
}: {
  vehicle: string;
  row: FittingRow;
  onClose: () => void;
}) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { today, photos } = useStores();
  const settings = useSettings();
  const facts = useFacts();
  const photo = usePhoto(photoKey(vehicle, row));
  const first = typedOf(row.size);
  const [drive, setDrive] = useState(row.drive);
  const [typed, setTyped] = useState(first.typed);
  const [unit, setUnit] = useState<'mm' | 'in'>(first.unit);
  const [torque, setTorque] = useState<number | null>(row.torqueNm);
  const [access, setAccess] = useState(row.access);
  const [hold, setHold] = useState<'none' | 'same' | 'other'>(
    row.hold === null ? 'none' : row.hold.size === row.size ? 'same' : 'other',
  );
  const [holdSize, setHoldSize] = useState(row.hold?.size ?? '');
  const [note, setNote] = useState(row.note ?? '');
  const [sure, setSure] = useState(row.confirmed);
  const [by, setBy] = useState(row.by ?? Object.values(garage.people)[0]?.name ?? '');

  const entry = entryOf(drive);
  const size = sizeText(typed, entry, unit);
  const odd = size !== null && facts !== null && !facts.headSizes.includes(size) && size !== row.size;
  const near = size === null || facts === null ? null : nearestOf(size, facts.headSizes);
  const ready = size !== null && (!odd || sure);
  const title = row.position === null ? row.title : `${row.title}, ${row.position}`;
  const save = async (status: FittingRow['status']) => {
    if (size === null) return;
    const said = {
      drive,
      size,
      access,
      ...(torque === null ? {} : { torqueNm: torque }),
      counterHold: hold === 'none' ? false : hold === 'same' ? true : { size: holdSize },
      status,
      confirmed: sure,
      ...(status === 'assumed'
        ? {}
        : { on: dateOf(today()), ...(by.trim() === '' ? {} : { by: by.trim() }) }),
      ...(note.trim() === '' ? {} : { note: note.trim() }),
    };
    await edit(t('fittings.edited', { title, size }), (g) => recordFitting(g, vehicle, row, said));
    onClose();
  };
  return (
    <Dialog title={title} isOpen onClose={onClose}>
      <div className="block fitting-form">
        <p className="quiet small">
          {t('fittings.usual', { sizes: row.usual.join(', ') })}
          {row.jobs.length > 0 && ` ${t('fittings.usedBy', { jobs: row.jobs.slice(0, 4).join('; ') })}`}
        </p>
        <div className="fields">
          <Choice
            label={t('fittings.head')}
            value={drive}
            onChange={setDrive}
            options={DRIVES.map((id) => ({ id, label: t(`fittings.drive.${id}`) }))}
          />
          <TextField
            label={t(`fittings.entry.${entry}`)}
            value={typed}
            onChange={setTyped}
            error={size === null ? t('fittings.noSize') : null}
          />
          {entry === 'width' && (
            <Choice
              label={t('fittings.unit')}
              value={unit}
              onChange={setUnit}
              options={[
                { id: 'mm', label: t('fittings.millimetres') },
                { id: 'in', label: t('fittings.inches') },
              ]}
            />
          )}
          <QuantityField
            label={t('fittings.torque')}
            value={torque}
            onChange={setTorque}
            unit={fieldUnit('torque', settings.torque === 'lb-ft' ? 'inch' : 'metric')}
            least={0}
            hint={t('fittings.torqueHint')}
          />
          <Choice
            label={t('fittings.reach')}
            value={access}
            onChange={setAccess}
            options={ACCESSES.map((id) => ({ id, label: t(`fittings.access.${id}`) }))}
          />
          <Choice
            label={t('fittings.hold')}
            value={hold}
            onChange={setHold}
            options={[
              { id: 'none', label: t('fittings.holdNone') },
              { id: 'same', label: t('fittings.holdSame') },
              { id: 'other', label: t('fittings.holdOther') },
            ]}
          />
          {hold === 'other' && (
            <TextField label={t('fittings.holdSize')} value={holdSize} onChange={setHoldSize} />
          )}
          <TextField label={t('fittings.who')} value={by} onChange={setBy} />
          <TextField label={t('fittings.note')} value={note} onChange={setNote} lines={2} />
        </div>
        <div className="acts">{photo.url === null && <PhotoButton photo={photo} />}</div>
        <PhotoBox photo={photo} title={title} />
        {odd && (
          <div role="alert" className="block">
            <Sentence strong>
              {t('fittings.odd', { size })}
              {near !== null && ` ${t('fittings.oddNear', { near })}`}
            </Sentence>
            <Check isOn={sure} onChange={setSure}>
              {t('fittings.sure', { size })}
            </Check>
          </div>
        )}
        <div className="acts">
          <Button main isDisabled={!ready} onPress={() => void save('measured')}>
            {t('fittings.saveMeasured')}
          </Button>
          <Button isDisabled={!ready} onPress={() => void save('read')}>
            {t('fittings.saveRead')}
          </Button>
          <Button isDisabled={!ready} onPress={() => void save('assumed')}>
            {t('fittings.saveAssumed')}
          </Button>
          {row.fitting !== null && (
            <Button
              onPress={() => {
                const id = row.fitting;
                if (id === null) return;
                void edit(t(row.added ? 'fittings.add.takenAway' : 'fittings.forgot', { title }), (g) =>
                  removeFitting(g, id),
                );
                void photos.remove(photoKey(vehicle, row));
                onClose();
              }}
            >
              {t(row.added ? 'fittings.add.takeAway' : 'fittings.forget')}
            </Button>
          )}
        </div>
      </div>
    </Dialog>
  );
}
