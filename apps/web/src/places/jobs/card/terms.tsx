import type { Garage, Trip } from '@waymend/garage/record/schema';
import { useTranslation } from 'react-i18next';
import { Check } from '../../../look/check.tsx';
import { OneOf } from '../../../look/one-of.tsx';
import type { Roadside } from '../roadside.ts';
import type { PlannedKit } from '../use-here.ts';

/** What the card goes by: which pieces, who is here, and the light. One press each. */
export function Terms({
  garage,
  trip,
  said,
  onSay,
  from,
}: {
  garage: Garage;
  trip: Trip;
  said: Roadside;
  onSay: (change: Partial<Roadside>) => void;
  from: PlannedKit['from'];
}) {
  const { t } = useTranslation();
  const people = trip.people.flatMap((id) => {
    const name = garage.people[id]?.name;
    return name === undefined ? [] : [{ id, name }];
  });
  const here = people.filter(({ id }) => !said.away.includes(id));
  return (
    <section className="terms" aria-label={t('jobs.terms.title')}>
      <OneOf
        label={t('jobs.terms.among')}
        value={from === 'none' ? 'everything' : said.among}
        onChange={(among) => onSay({ among })}
        options={[
          ...(from === 'none' ? [] : [{ id: 'kit' as const, label: t('jobs.terms.kit') }]),
          { id: 'everything' as const, label: t('jobs.terms.everything') },
        ]}
        across
      />
      <OneOf
        label={t('jobs.terms.light')}
        value={said.dark ? 'dark' : 'day'}
        onChange={(light) => onSay({ dark: light === 'dark' })}
        options={[
          { id: 'day', label: t('jobs.terms.day') },
          { id: 'dark', label: t('jobs.terms.dark') },
        ]}
        across
      />
      <fieldset className="terms-people">
        <legend>{t('jobs.terms.people')}</legend>
        <div className="terms-names">
          {people.map(({ id, name }) => {
            const isHere = !said.away.includes(id);
            return (
              <Check
                key={id}
                isOn={isHere}
                // Somebody is always here: who else would read this?
                isDisabled={isHere && here.length === 1}
                onChange={(stays) =>
                  onSay({ away: stays ? said.away.filter((one) => one !== id) : [...said.away, id] })
                }
              >
                {name}
              </Check>
            );
          })}
        </div>
      </fieldset>
      <p className="small quiet terms-from">{t(`jobs.terms.from.${said.among === 'kit' ? from : 'all'}`)}</p>
    </section>
  );
}
