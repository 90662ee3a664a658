import type { RepairLimits } from '@waymend/garage/road/repair-limits';
import { repairLimits } from '@waymend/garage/road/repair-limits';
import type { Trade } from '../trade.ts';

/** One way a job may have been done, with how long the result may be trusted. */
export interface RepairWay {
  /** Catalogue expedient; null: done properly. */
  readonly expedient: string | null;
  readonly title: string;
  readonly limits: RepairLimits;
}

/** The ways a catalogue job can be recorded as done: properly first, then its weaker ways; empty for a job there is not. */
export function repairWays(job: string, trade: Pick<Trade, 'jobs'>): readonly RepairWay[] {
  const record = trade.jobs.find(({ id }) => id === job);
  if (record === undefined) return [];
  return [null, ...record.expedients].flatMap((way): RepairWay[] => {
    const limits = repairLimits(record, way?.id);
    return limits.ok
      ? [{ expedient: way?.id ?? null, title: way?.title ?? record.title, limits: limits.value }]
      : [];
  });
}
