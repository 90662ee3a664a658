import type { Grade } from '@waymend/core/repairing/scene';

/**
 * Part of the independent checker (M8). Everything in this folder is written again from docs/model.md, M2 to M7, and on
 * purpose shares no code with the fitting, repairing and choosing rules of core: a slip in those must show up here as a
 * disagreement, and it could not if both used one function.
 */

/** How good something is, or null when it cannot be done (or must not be). */
export type Mark = Grade | null;

const RANK: Readonly<Record<Grade, number>> = { proper: 3, 'with-care': 2, 'last-resort': 1 };

export function rank(mark: Mark): number {
  return mark === null ? 0 : RANK[mark];
}

/** A way is as good as the worst of its parts (M2). */
export function worst(...marks: readonly Mark[]): Mark {
  return marks.reduce<Mark>((a, b) => (rank(b) < rank(a) ? b : a), 'proper');
}

export function best(marks: Iterable<Mark>): Mark {
  let found: Mark = null;
  for (const mark of marks) if (rank(mark) > rank(found)) found = mark;
  return found;
}

/** One grade worse; what is worse than a last resort cannot be done. */
export function oneWorse(mark: Mark): Mark {
  switch (mark) {
    case 'proper':
      return 'with-care';
    case 'with-care':
      return 'last-resort';
    case 'last-resort':
    case null:
      return null;
  }
}

/** What a grade leaves of a repair's chance (M4, estimate). */
export function gradeFactor(grade: Grade): number {
  return grade === 'proper' ? 1 : grade === 'with-care' ? 0.9 : 0.5;
}
