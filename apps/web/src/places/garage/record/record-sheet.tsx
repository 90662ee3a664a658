import { useTranslation } from 'react-i18next';
import { useRecord } from '../../../shell/stores.tsx';
import { Conflicts } from './conflicts.tsx';
import { Copies } from './copies.tsx';
import { History } from './history.tsx';
import { Naming } from './naming.tsx';
import { Safety } from './safety.tsx';
import './record-sheet.css';

/** The record itself: what it is called, copies of it elsewhere, whether the browser keeps it, and what was done when. */
export function RecordSheet() {
  const { t } = useTranslation();
  const { changesSinceCopy, conflicts, garage } = useRecord();
  return (
    <div className="record">
      <div>
        <h1>{garage.name === '' ? t('record.title') : garage.name}</h1>
        <p className="quiet">
          {changesSinceCopy === 0
            ? t('record.allCopied')
            : t('record.notCopied', { count: changesSinceCopy })}
        </p>
      </div>
      {conflicts.length > 0 && <Conflicts conflicts={conflicts} />}
      <div className="record-columns">
        <div className="record-column">
          <Copies />
          <Safety />
        </div>
        <div className="record-column">
          <Naming />
          <History />
        </div>
      </div>
    </div>
  );
}
