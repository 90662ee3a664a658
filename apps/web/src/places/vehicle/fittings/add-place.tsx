import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { Button } from '../../../look/button.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { TextField } from '../../../look/field.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import type { Added } from '../edits.ts';
import { addPlace } from '../edits.ts';
import { useFacts } from '../use-facts.ts';

/** Most places that are offered at once; more words narrow it down. */
const SHOWN = 8;
const LONGEST_POSITION = 40;

interface Named {
  readonly id: string;
  readonly title: string;
}

/** Adds any place of the catalogue, at any position; the form of the place opens next. */
export function AddPlace({
  vehicle,
  rows,
  onClose,
  onAdded,
}: {
  vehicle: string;
  rows: readonly FittingRow[];
  onClose: () => void;
  onAdded: (added: Added) => void;
}) {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const [chosen, setChosen] = useState<Named | null>(null);
  const [position, setPosition] = useState('');
  const where = position.trim().toLowerCase().slice(0, LONGEST_POSITION);
  const isThere = chosen !== null && rows.some((r) => r.place === chosen.id && (r.position ?? '') === where);
  const add = async ({ id, title }: Named) => {
    const added: Added = { place: id, position: where === '' ? null : where };
    const full = where === '' ? title : `${title}, ${where}`;
    if (!isThere)
      await edit(t('fittings.add.step', { title: full }), (g) => addPlace(g, vehicle, added, rows));
    onAdded(added);
  };
  return (
    <Dialog title={t('fittings.add.title')} isOpen onClose={onClose}>
      <div className="block fitting-form">
        <p className="prose quiet">{t('fittings.add.what')}</p>
        {chosen === null ? (
          <FindPlace onChoose={setChosen} />
        ) : (
          <>
            <p className="decides">{t('fittings.add.chosen', { title: chosen.title })}</p>
            <TextField
              label={t('fittings.add.position')}
              hint={t('fittings.add.positionHint')}
              value={position}
              onChange={setPosition}
            />
            <p role="status">{isThere && t('fittings.add.there')}</p>
            <div className="acts">
              <Button main onPress={() => void add(chosen)}>
                {t('fittings.add.act')}
              </Button>
              <Button onPress={() => setChosen(null)}>{t('fittings.add.another')}</Button>
            </div>
          </>
        )}
      </div>
    </Dialog>
  );
}

function FindPlace({ onChoose }: { onChoose: (place: Named) => void }) {
  const { t } = useTranslation();
  const facts = useFacts();
  const [typed, setTyped] = useState('');
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const found =
    facts?.places.filter(({ title }) => words.every((word) => title.toLowerCase().includes(word))) ?? [];
  return (
    <>
      <TextField
        label={t('fittings.add.find')}
        hint={t('fittings.add.findHint')}
        value={typed}
        onChange={setTyped}
      />
      <ul className="rows" aria-label={t('fittings.add.places')}>
        {found.slice(0, SHOWN).map((place) => (
          <li key={place.id} className="row">
            <Button onPress={() => onChoose(place)}>{place.title}</Button>
          </li>
        ))}
      </ul>
      <p className="small quiet" role="status">
        {facts !== null && found.length === 0 && t('fittings.add.none')}
        {found.length > SHOWN && t('fittings.add.more', { count: found.length - SHOWN })}
      </p>
    </>
  );
}
