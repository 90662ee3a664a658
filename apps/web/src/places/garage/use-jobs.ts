import { useEffect, useState } from 'react';
import { useSettings, useStores } from '../../shell/stores.tsx';
import type { ListedJob } from '../../worker/trip/protocol.ts';

/** Every repair of the catalogue in the owner's words; null until the worker has told. */
export function useJobs(): readonly ListedJob[] | null {
  const { reader } = useStores();
  const { wording } = useSettings();
  const [jobs, setJobs] = useState<readonly ListedJob[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    void reader.once({ kind: 'trip/jobs' }).then((reply) => {
      if (isWanted && reply.kind === 'trip/jobs') setJobs(reply.jobs);
    });
    return () => {
      isWanted = false;
    };
    // The titles are in the words of the moment.
  }, [reader, wording]);
  return jobs;
}
