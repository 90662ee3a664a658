import type { JobRef } from '@waymend/planner/answer/plan-answer';
import { useState } from 'react';
import { Button as Plain } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';

const FIRST = 8;

/** Jobs by name; each opens. */
export function JobLinks({ jobs, open }: { jobs: readonly JobRef[]; open: (id: string) => void }) {
  const { t } = useTranslation();
  const [all, setAll] = useState(false);
  const shown = all ? jobs : jobs.slice(0, FIRST);
  return (
    <>
      <ul className="why-rows">
        {shown.map(({ id, title }) => (
          <li key={id}>
            <Plain className="why-open" onPress={() => open(id)}>
              {title}
            </Plain>
          </li>
        ))}
      </ul>
      {jobs.length > FIRST && (
        <Button onPress={() => setAll(!all)}>
          {all ? t('kit.showFewer') : t('why.allOf', { count: jobs.length })}
        </Button>
      )}
    </>
  );
}
