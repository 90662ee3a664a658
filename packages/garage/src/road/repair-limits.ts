import type { Job } from '@waymend/catalogue/shape/job';
import { TRUST_KM } from '@waymend/catalogue/shape/trust';
import type { Trust } from '@waymend/catalogue/shape/words';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';

/** How long a repair may be trusted, as the catalogue has it; the maker's manual comes first. */
export interface RepairLimits {
  readonly lasts: 'permanent' | 'temporary' | 'made-safe';
  readonly trustKm?: number;
  readonly speedKmh?: number;
  /** Distances after the repair at which to look again, rising. */
  readonly lookAgainKm: readonly number[];
}

/** Limits of a job done properly, or in the weaker way named. */
export function repairLimits(job: Job, expedientId?: string): Result<RepairLimits> {
  const later = job.after.flatMap(({ km }) => (km === undefined ? [] : [km]));
  if (expedientId === undefined) {
    const lasts =
      job.outcome === 'drive-on' ? 'permanent' : job.outcome === 'limp' ? 'temporary' : 'made-safe';
    return ok({ lasts, ...(lasts === 'temporary' ? trusted(job.trust) : {}), lookAgainKm: rising(later) });
  }
  const way = job.expedients.find(({ id }) => id === expedientId);
  if (way === undefined) {
    const known = job.expedients.map(({ id }) => id).join(', ');
    return refuse(
      'way-unknown',
      `"${job.title}" has no weaker way "${expedientId.slice(0, 64)}"; it has ${known === '' ? 'none' : known}`,
    );
  }
  return ok({
    lasts: way.trust === 'T0' ? 'made-safe' : 'temporary',
    ...trusted(way.trust),
    ...(way.speedKmh === undefined ? {} : { speedKmh: way.speedKmh }),
    lookAgainKm: rising([...later, ...(way.lookAgainKm === undefined ? [] : [way.lookAgainKm])]),
  });
}

function trusted(trust: Trust | undefined): { readonly trustKm?: number } {
  const km = TRUST_KM[trust ?? 'T0'];
  return km === null ? {} : { trustKm: km };
}

function rising(distances: readonly number[]): readonly number[] {
  return [...new Set(distances)].sort((a, b) => a - b);
}
