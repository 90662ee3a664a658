import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../look/button.tsx';
import { TextField } from '../../look/field.tsx';
import { findJobs } from './find-jobs.ts';
import { useJobs } from './use-jobs.ts';
import './job-picker.css';

/** Most jobs that are offered at once; more words narrow it down. */
const SHOWN = 8;

export interface JobPickerProps {
  /** Ids of the jobs that are chosen. */
  readonly chosen: readonly string[];
  readonly onAdd: (id: string, title: string) => void;
  readonly onRemove: (id: string, title: string) => void;
  readonly label: string;
  readonly hint: string;
  /** What is said while nothing is chosen. */
  readonly none: string;
}

/** Repairs that are looked up by a word and kept as a list. */
export function JobPicker({ chosen, onAdd, onRemove, label, hint, none }: JobPickerProps) {
  const { t } = useTranslation();
  const jobs = useJobs();
  const [typed, setTyped] = useState('');
  const found = jobs === null ? [] : findJobs(jobs, typed, chosen);
  const titleOf = (id: string) => jobs?.find((job) => job.id === id)?.title ?? id;
  return (
    <div className="job-picker">
      {chosen.length === 0 ? (
        <p className="quiet">{none}</p>
      ) : (
        <ul className="rows">
          {chosen.map((id) => (
            <li key={id} className="row job-row">
              <span>{titleOf(id)}</span>
              <Button
                label={t('people.removeJob', { title: titleOf(id) })}
                onPress={() => onRemove(id, titleOf(id))}
              >
                {t('people.takeOff')}
              </Button>
            </li>
          ))}
        </ul>
      )}
      <TextField label={label} hint={hint} value={typed} onChange={setTyped} />
      {typed.trim() !== '' && (
        <div className="job-found">
          <p className="small quiet" role="status">
            {t('people.found', { count: found.length })}
          </p>
          <ul className="rows">
            {found.slice(0, SHOWN).map(({ id, title, skill }) => (
              <li key={id} className="row job-row">
                <span>
                  {title} <span className="small quiet">{t('people.jobSkill', { skill })}</span>
                </span>
                <Button
                  label={t('people.addJob', { title })}
                  onPress={() => {
                    onAdd(id, title);
                    setTyped('');
                  }}
                >
                  {t('people.putOn')}
                </Button>
              </li>
            ))}
          </ul>
          {found.length > SHOWN && (
            <p className="small quiet">{t('people.moreFound', { count: found.length - SHOWN })}</p>
          )}
        </div>
      )}
    </div>
  );
}
