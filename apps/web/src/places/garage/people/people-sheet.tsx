import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { More } from '../../../look/more.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { addPerson } from './edit-people.ts';
import { PersonForm } from './person-form.tsx';
import { levelOf } from './levels.ts';
import './people.css';

/** Everybody who may travel, one row each that opens into its form. */
export function PeopleSheet() {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const people = Object.entries(garage.people);
  const [open, setOpen] = useState<string | null>(people.length === 1 ? (people[0]?.[0] ?? null) : null);
  const add = async () => {
    const name = t('people.newName', { number: people.length + 1 });
    const id = freshId('person');
    await edit(t('people.added', { name }), (before) => addPerson(before, id, name));
    setOpen(id);
  };
  return (
    <div className="people">
      <h1>{people.length === 0 ? t('people.title') : t('people.headline', { count: people.length })}</h1>
      <p className="prose quiet">{people.length === 0 ? t('people.none') : t('people.what')}</p>
      <ul className="rows">
        {people.map(([id, person]) => (
          <li key={id} className="row">
            <More
              title={person.name}
              summary={t('people.open', {
                mass: format.load(person.massKg),
                skill: t(`people.level.${levelOf(person.skill)}`),
              })}
              isOpen={id === open}
              onOpenChange={(isOpen) => setOpen(isOpen ? id : null)}
            >
              {id === open && <PersonForm id={id} person={person} />}
            </More>
          </li>
        ))}
      </ul>
      <div>
        <Button main={people.length === 0} onPress={() => void add()}>
          {t('people.add')}
        </Button>
      </div>
    </div>
  );
}
