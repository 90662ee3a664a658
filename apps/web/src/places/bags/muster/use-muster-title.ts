import type { Garage } from '@waymend/garage/record/schema';
import { useTranslation } from 'react-i18next';
import { useRecord } from '../../../shell/stores.tsx';
import { useJobs } from '../../garage/use-jobs.ts';

/** What a muster is called: its job, else its note, else that it is a count. */
export function useMusterTitle(): (muster: Garage['musters'][string]) => string {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const jobs = useJobs();
  return ({ job, note, vehicle }) =>
    (job === undefined ? note : (jobs?.find(({ id }) => id === job)?.title ?? job)) ??
    t('bags.muster.countOf', { vehicle: garage.vehicles[vehicle]?.name ?? vehicle });
}
