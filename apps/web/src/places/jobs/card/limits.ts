import type { JobCard } from '@waymend/planner/answer/card-answer';

/** Something that is due at a distance after the repair. */
export interface Mark {
  readonly km: number;
  readonly words: readonly string[];
  /** From here on the repair is no longer trusted. */
  readonly isEnd: boolean;
}

export interface Afterwards {
  /** Before driving on. */
  readonly first: readonly string[];
  /** Rising. */
  readonly marks: readonly Mark[];
}

/** What is looked at before driving on and after which distance, and where trust ends; `ends` says so in words. */
export function afterwards(
  { after, trustedKm, outcome }: Pick<JobCard, 'after' | 'trustedKm' | 'outcome'>,
  ends: string,
): Afterwards {
  const at = new Map<number, string[]>();
  for (const { check, km } of after) if (km !== null && km > 0) at.set(km, [...(at.get(km) ?? []), check]);
  const end = outcome === 'limp' && trustedKm !== null ? trustedKm : null;
  if (end !== null) at.set(end, [...(at.get(end) ?? []), ends]);
  return {
    first: after.flatMap(({ check, km }) => (km === null || km <= 0 ? [check] : [])),
    marks: [...at].map(([km, words]) => ({ km, words, isEnd: km === end })).sort((a, b) => a.km - b.km),
  };
}
