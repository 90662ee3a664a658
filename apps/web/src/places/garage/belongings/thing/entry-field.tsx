import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import type { Row } from '../rows.ts';
import { ThingPicker } from '../thing-picker.tsx';
import { useCatalogue } from '../use-catalogue.ts';
import { useEditThing } from '../use-edit-thing.ts';

/** What the planner takes it for, and another choice. */
export function EntryField({ row }: { row: Row }) {
  const { t } = useTranslation();
  const catalogue = useCatalogue();
  const { change } = useEditThing(row.id, row.name);
  const [choosing, setChoosing] = useState(false);
  const { is } = row.belonging;
  const line = is === undefined ? undefined : catalogue?.byId.get(is);
  const said =
    line === undefined
      ? t('belongings.entryNone')
      : t('belongings.entry', { name: line.size === null ? line.name : `${line.name}, ${line.size}` });
  return (
    <div className="picker">
      <p>{said}</p>
      {choosing ? (
        <ThingPicker
          label={t('belongings.entrySearch')}
          start={row.name}
          onChoose={(next) => {
            // A size and length of its own belonged to what it was taken for.
            change(t('belongings.entryStep'), { is: next }, ['size', 'handleMm', 'stock']);
            setChoosing(false);
          }}
        />
      ) : (
        <div className="acts">
          <Button onPress={() => setChoosing(true)}>{t('belongings.entryChange')}</Button>
          {is !== undefined && (
            <Button
              onPress={() =>
                change(t('belongings.entryStep'), { name: row.name }, ['is', 'size', 'handleMm', 'stock'])
              }
            >
              {t('belongings.entryOwn')}
            </Button>
          )}
        </div>
      )}
    </div>
  );
}
