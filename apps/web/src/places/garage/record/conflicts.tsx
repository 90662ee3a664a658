import { EXISTS } from '@waymend/garage/log/change';
import type { Conflict } from '@waymend/garage/log/conflict';
import { clockOf } from '@waymend/garage/log/stamp';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord, useSettings } from '../../../shell/stores.tsx';
import { nameOf, titleOf, wordsOf } from './conflict-words.ts';

const WHEN = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** Both values side by side, when each was written, and one press that ends it. Nothing is lost by waiting. */
export function Conflicts({ conflicts }: { conflicts: readonly Conflict[] }) {
  const { t } = useTranslation();
  const { garage, settle } = useRecord();
  const { wording } = useSettings();
  return (
    <Block title={t('record.conflicts')} aside={t('record.conflictsAside')}>
      <ul className="conflicts">
        {conflicts.map(({ entity, field, values }) => {
          const title =
            field === EXISTS
              ? t('record.thereOrNot', { name: nameOf(garage, entity) })
              : titleOf(garage, entity, field, wording);
          return (
            <li key={`${entity} ${field}`} className="conflict">
              <h3>{title}</h3>
              <div className="conflict-values">
                {values.map(({ value, change }) => {
                  const words =
                    field === EXISTS
                      ? t(value === true ? 'record.stillThere' : 'record.deleted')
                      : wordsOf(garage, field, value);
                  return (
                    <div key={change.id} className="conflict-value">
                      <p className="decides">{words}</p>
                      <p className="small quiet">
                        {change.step.title}, {WHEN.format(new Date(clockOf(change.time)))}
                      </p>
                      <Button
                        label={t('record.keepThisNamed', { title, words })}
                        onPress={() =>
                          void settle(t('record.stepSettled', { title }), { entity, field }, value)
                        }
                      >
                        {t('record.keepThis')}
                      </Button>
                    </div>
                  );
                })}
              </div>
            </li>
          );
        })}
      </ul>
    </Block>
  );
}
