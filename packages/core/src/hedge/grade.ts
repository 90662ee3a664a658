import type { Grade } from '../repairing/scene.ts';

/** Grades from best to worst; a way is as good as the worst of its parts (M2). */
export const GRADES: readonly Grade[] = ['proper', 'with-care', 'last-resort'];

const RANK: Readonly<Record<Grade, number>> = { proper: 0, 'with-care': 1, 'last-resort': 2 };

/** Chance left by a grade (M4). Estimate. */
export const GRADE_FACTOR: Readonly<Record<Grade, number>> = {
  proper: 1,
  'with-care': 0.9,
  'last-resort': 0.5,
};

/** A grade, or null where the thing cannot be done or must not be. */
export type Fit = Grade | null;

/** The worst of several; null when one of them cannot be. */
export function worstOf(...fits: readonly Fit[]): Fit {
  let worst: Grade = 'proper';
  for (const fit of fits) {
    if (fit === null) return null;
    if (RANK[fit] > RANK[worst]) worst = fit;
  }
  return worst;
}

/** One grade worse; below a last resort there is nothing. */
export function oneWorse(fit: Fit): Fit {
  if (fit === 'proper') return 'with-care';
  return fit === 'with-care' ? 'last-resort' : null;
}

export function atLeast(grade: Grade, wanted: Grade): boolean {
  return RANK[grade] <= RANK[wanted];
}

/** The better of two. */
export function betterOf(a: Fit, b: Fit): Fit {
  if (a === null) return b;
  if (b === null) return a;
  return RANK[a] <= RANK[b] ? a : b;
}

/** Strictly better. */
export function isBetter(a: Grade, b: Grade): boolean {
  return RANK[a] < RANK[b];
}
