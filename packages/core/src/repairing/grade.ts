import type { Grade } from './scene.ts';

/** Grades, best first (M2). What is below a last resort is forbidden and has no grade: null. */
export const GRADES: readonly Grade[] = ['proper', 'with-care', 'last-resort'];

const RANK: Readonly<Record<Grade, number>> = { proper: 2, 'with-care': 1, 'last-resort': 0 };

/** What a grade leaves of a job's chance (M4, estimate). */
export const GRADE_FACTOR: Readonly<Record<Grade, number>> = {
  proper: 1,
  'with-care': 0.9,
  'last-resort': 0.5,
};

/** Whether a grade is at least as good as another; null is worse than any. */
export function isAtLeast(grade: Grade | null, other: Grade): boolean {
  return grade !== null && RANK[grade] >= RANK[other];
}

/** A way is as good as the worst of its parts (M2); null when one of them is forbidden. */
export function worstOf(...grades: readonly (Grade | null)[]): Grade | null {
  let worst: Grade = 'proper';
  for (const grade of grades) {
    if (grade === null) return null;
    if (RANK[grade] < RANK[worst]) worst = grade;
  }
  return worst;
}

/** The better of two. */
export function betterOf(a: Grade | null, b: Grade | null): Grade | null {
  return b === null || (a !== null && RANK[a] >= RANK[b]) ? a : b;
}

/** One grade worse; worse than a last resort is forbidden. */
export function oneWorse(grade: Grade | null): Grade | null {
  return grade === 'proper' ? 'with-care' : grade === 'with-care' ? 'last-resort' : null;
}
