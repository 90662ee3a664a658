import { installationOf } from '@waymend/garage/log/change';
import { clockOf } from '@waymend/garage/log/stamp';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';

const AT_FIRST = 20;
const WHEN = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** What was done, newest first, with day, time and device. Nothing here is ever erased; an undo is a line of its own. */
export function History() {
  const { t } = useTranslation();
  const { history } = useRecord();
  const [most, setMost] = useState(AT_FIRST);
  const newest = history.slice(-most).reverse();
  const devices = [...new Set(history.map(({ device }) => installationOf(device)))];
  return (
    <Block title={t('record.history')} aside={t('record.steps', { count: history.length })}>
      {newest.length === 0 ? (
        <p className="quiet">{t('record.noSteps')}</p>
      ) : (
        <ol className="history">
          {newest.map((step) => (
            <li key={step.id}>
              <span className="history-title">
                {step.undoes === undefined ? step.title : t('record.undone', { title: step.title })}
              </span>
              <span className="small quiet">
                {WHEN.format(new Date(clockOf(step.time)))}
                {devices.length > 1
                  ? `, ${t('record.device', { number: devices.indexOf(installationOf(step.device)) + 1 })}`
                  : ''}
              </span>
            </li>
          ))}
        </ol>
      )}
      {history.length > most && (
        <div className="acts">
          <Button onPress={() => setMost(most + 100)}>
            {t('record.earlier', { count: history.length - most })}
          </Button>
        </div>
      )}
    </Block>
  );
}
