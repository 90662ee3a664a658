import { SYSTEMS } from '@waymend/catalogue/shape/words';
import { useTranslation } from 'react-i18next';
import type { Garage, Person } from '@waymend/garage/record/schema';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Button } from '../../../look/button.tsx';
import { Choice } from '../../../look/field.tsx';
import { More } from '../../../look/more.tsx';
import { OneOf } from '../../../look/one-of.tsx';
import { Sentence } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { JobPicker } from '../job-picker.tsx';
import { aloneOn, changePerson, removePerson, setSystemSkill } from './edit-people.ts';
import { LEVELS, levelOf } from './levels.ts';

/** Name, mass and skill in words; skill by system and practised jobs folded away. */
export function PersonForm({ id, person }: { id: string; person: Person }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { name } = person;
  const act = (change: (before: Garage) => Garage, title = t('people.changed', { name })) =>
    void edit(title, change);
  const set = (fields: Partial<Person>, title?: string) =>
    act((before) => changePerson(before, id, fields), title);
  const unit = useFieldUnit('load');
  const alone = aloneOn(garage, id);
  return (
    <div className="person">
      <div className="fields">
        <SettledTextField
          label={t('people.name')}
          value={name}
          onSettle={(next) => {
            if (next !== '') set({ name: next });
          }}
        />
        <QuantityField
          label={t('people.mass')}
          hint={t('people.massHint')}
          unit={unit}
          value={person.massKg}
          least={1}
          most={300}
          onChange={(massKg) => massKg !== null && set({ massKg })}
        />
      </div>
      <OneOf
        label={t('people.skill')}
        value={levelOf(person.skill)}
        options={LEVELS.map((level) => ({
          id: level,
          label: `${level}  ${t(`people.level.${level}`)}`,
          remark: t(`people.can.${level}`),
        }))}
        onChange={(level) => set({ skill: Number(level) })}
      />
      <More title={t('people.systems')} summary={differing(person)}>
        <div className="fields">
          {SYSTEMS.map((system) => (
            <Choice
              key={system}
              label={t(`people.system.${system}`)}
              value={person.skills[system] === undefined ? SAME : levelOf(person.skills[system])}
              options={[
                { id: SAME, label: t('people.same', { level: t(`people.level.${levelOf(person.skill)}`) }) },
                ...LEVELS.map((level) => ({ id: level, label: `${level}  ${t(`people.level.${level}`)}` })),
              ]}
              onChange={(level) =>
                act((before) => setSystemSkill(before, id, system, level === SAME ? null : Number(level)))
              }
            />
          ))}
        </div>
      </More>
      <More
        title={t('people.practised')}
        summary={t('people.practisedSummary', { count: person.practised.length })}
      >
        <JobPicker
          chosen={person.practised}
          label={t('people.practisedFind')}
          hint={t('people.practisedHint')}
          none={t('people.practisedNone')}
          onAdd={(job, title) =>
            set({ practised: [...person.practised, job] }, t('people.practisedAdded', { name, title }))
          }
          onRemove={(job, title) =>
            set(
              { practised: person.practised.filter((one) => one !== job) },
              t('people.practisedRemoved', { name, title }),
            )
          }
        />
      </More>
      <div className="acts">
        <Button
          isDisabled={alone.length > 0}
          onPress={() => act((before) => removePerson(before, id), t('people.removed', { name }))}
        >
          {t('people.remove', { name })}
        </Button>
      </div>
      {alone.length > 0 && <Sentence>{t('people.alone', { name, trips: alone.join(', ') })}</Sentence>}
    </div>
  );

  function differing({ skills }: Person): string {
    const count = Object.keys(skills).length;
    return count === 0 ? t('people.systemsNone') : t('people.systemsSummary', { count });
  }
}

const SAME = 'same';
