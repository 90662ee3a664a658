import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import type { Person, Trip } from '@waymend/garage/record/schema';
import { useFormat } from '../../../format/use-format.ts';
import { Check } from '../../../look/check.tsx';
import { Choice } from '../../../look/field.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { changePerson } from '../people/edit-people.ts';
import { levelOf } from '../people/levels.ts';
import { seatPerson } from './edit-trip.ts';

const NONE = '';

/** Who travels and where each one sits: their mass is carried, their skill and number decide which jobs can be done. */
export function Aboard({ tripId, trip }: { tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const kg = trip.people.reduce((sum, id) => sum + (garage.people[id]?.massKg ?? 0), 0);
  return (
    <Block
      title={t('trip.aboard.title')}
      aside={t('trip.aboard.sum', { count: trip.people.length, mass: format.load(kg) })}
    >
      <ul className="rows">
        {Object.entries(garage.people).map(([id, person]) => (
          <li key={id} className="row aboard">
            <Check
              isOn={trip.people.includes(id)}
              isDisabled={trip.people.length === 1 && trip.people[0] === id}
              onChange={(aboard) =>
                void edit(
                  t(aboard ? 'trip.aboard.came' : 'trip.aboard.left', { name: person.name }),
                  (before) => seatPerson(before, tripId, id, aboard),
                )
              }
            >
              {person.name}{' '}
              <span className="small quiet keep">
                {t('trip.aboard.what', {
                  mass: format.load(person.massKg),
                  skill: t(`people.level.${levelOf(person.skill)}`),
                })}
              </span>
            </Check>
            {trip.people.includes(id) && <Seat id={id} person={person} vehicle={trip.vehicle} />}
          </li>
        ))}
      </ul>
      <p className="small quiet">
        {t('trip.aboard.hint')} <Link href="/garage/people">{t('trip.aboard.toPeople')}</Link>
      </p>
    </Block>
  );
}

function Seat({ id, person, vehicle }: { id: string; person: Person; vehicle: string }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const berths = Object.entries(garage.berths).filter(
    ([, berth]) => berth.vehicle === vehicle && !berth.roof,
  );
  const here = berths.some(([berth]) => berth === person.berth) ? (person.berth ?? NONE) : NONE;
  return (
    <Choice
      label={t('trip.aboard.seat', { name: person.name })}
      value={here}
      options={[
        { id: NONE, label: t('trip.aboard.anySeat') },
        ...berths.map(([berth, { name }]) => ({ id: berth, label: name })),
      ]}
      onChange={(berth) =>
        void edit(t('trip.aboard.seated', { name: person.name }), (before) =>
          changePerson(before, id, Object.fromEntries([['berth', berth === NONE ? undefined : berth]])),
        )
      }
    />
  );
}
