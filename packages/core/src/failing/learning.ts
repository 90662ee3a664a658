import { gammaQuantile } from './gamma.ts';

/** What happened to a group, beside what its plain rates had expected over the same distances. */
export interface GroupExperience {
  readonly group: string;
  readonly title: string;
  /** Shape of the gamma prior. */
  readonly shape: number;
  /** Events that the rates expect over the recorded distances. */
  readonly expected: number;
  /** Events that happened there. */
  readonly events: number;
}

/** A rate as a multiple of the plain one: its mean, and the range it lies in with 90 % belief. */
export interface RateBelief {
  readonly shape: number;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

export interface LearnedRate extends GroupExperience {
  readonly prior: RateBelief;
  readonly posterior: RateBelief;
}

/**
 * Gamma-Poisson (M1): with theta the rate over the plain one, theta ~ Gamma(k, k) before and Gamma(k + n, k + E) after n
 * events where E were expected. On one surface that is (k + n) / (k / lambda + km / 10,000) for the rate itself.
 */
export function learnedRate(experience: GroupExperience): LearnedRate {
  const { shape, expected, events } = experience;
  return { ...experience, prior: belief(shape, shape), posterior: belief(shape + events, shape + expected) };
}

function belief(shape: number, rate: number): RateBelief {
  return {
    shape,
    mean: shape / rate,
    low: gammaQuantile(shape, 0.05) / rate,
    high: gammaQuantile(shape, 0.95) / rate,
  };
}
