import { SYSTEMS } from '@waymend/catalogue/shape/words';
import type { System } from '@waymend/catalogue/shape/words';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';

/** A job of this vehicle as a list shows it. */
export interface JobLine {
  /** 'SS-04@front'. */
  readonly id: string;
  readonly title: string;
}

export interface SystemJobs {
  readonly system: System;
  readonly jobs: readonly JobLine[];
}

/** Every job of this vehicle, by system in the order of the catalogue; weaker ways stand on the card of their job. */
export function jobList({ scene }: BuiltScene): readonly SystemJobs[] {
  return SYSTEMS.flatMap((system) => {
    const jobs = scene.jobs.flatMap(({ id, title, system: of, expedient }) =>
      of === system && !expedient ? [{ id, title }] : [],
    );
    return jobs.length === 0 ? [] : [{ system, jobs }];
  });
}

/** A failure and how many of it are expected on this trip (M1). */
export interface CauseLine {
  readonly failure: string;
  readonly title: string;
  readonly expected: number;
}

/** The failures of this vehicle that a job puts right, the most expected first. */
export function causesOf(
  { rates }: Pick<BuiltScene, 'rates'>,
  trade: Pick<Trade, 'failures'>,
  job: string,
): readonly CauseLine[] {
  const leading = new Set(trade.failures.filter((f) => f.jobs.includes(job)).map(({ id }) => id));
  return rates.failures
    .flatMap(({ failure, title, events }) =>
      leading.has(failure) ? [{ failure, title, expected: events }] : [],
    )
    .sort((a, b) => b.expected - a.expected || (a.title < b.title ? -1 : 1));
}
