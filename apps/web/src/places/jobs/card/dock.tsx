import { openMuster } from '@waymend/garage/road/muster';
import type { CardPiece } from '@waymend/planner/ready/job-pieces';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLocation } from 'wouter';
import { Button } from '../../../look/button.tsx';
import { LinkButton } from '../../../look/link-button.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';

/** The two acts of a card, docked where the thumb is: count its pieces out, and record that it is done. */
export function Dock({
  job,
  title,
  trip,
  vehicle,
  pieces,
}: {
  job: string;
  title: string;
  trip: string;
  vehicle: string;
  pieces: readonly CardPiece[];
}) {
  const { t } = useTranslation();
  const [, go] = useLocation();
  const { garage, edit } = useRecord();
  const { today } = useStores();
  const [refusal, setRefusal] = useState<string | null>(null);
  const count = pieces.reduce((sum, one) => sum + one.pieces, 0);
  const catalogueJob = job.replace(/@.*$/, '');
  const open = Object.values(garage.musters).some(
    (muster) => muster.closedOn === undefined && muster.vehicle === vehicle && muster.job === catalogueJob,
  );
  const countOut = () => {
    const muster = freshId('muster');
    const start = {
      id: muster,
      vehicle,
      trip,
      job: catalogueJob,
      on: dateOf(today()),
      out: pieces.map((one) => ({ ...one, id: freshId(one.belonging) })),
    };
    const opened = openMuster(garage, start);
    if (!opened.ok) {
      setRefusal(opened.error.message);
      return;
    }
    setRefusal(null);
    void edit(t('jobs.dock.counted', { title, count }), (g) => {
      const again = openMuster(g, start);
      return again.ok ? again.value : g;
    });
    go('/bags/muster');
  };
  return (
    <div className="dock">
      {refusal !== null && (
        <p role="alert" className="dock-words">
          {refusal}.
        </p>
      )}
      <div className="dock-acts">
        {open ? (
          <LinkButton to="/bags/muster" main>
            {t('jobs.dock.countIn')}
          </LinkButton>
        ) : (
          <Button main onPress={countOut} isDisabled={count === 0}>
            {t('jobs.dock.countOut', { count })}
          </Button>
        )}
        <LinkButton to={`/jobs/repairs/${job}`} main>
          {t('jobs.dock.done')}
        </LinkButton>
      </div>
    </div>
  );
}
