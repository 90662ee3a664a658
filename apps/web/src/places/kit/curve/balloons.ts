import type { Step } from './steps.ts';

/** Balloons that hang from one riser of the staircase. */
export interface BalloonGroup {
  /** The step they come in with. */
  readonly step: number;
  /** Numbers of the rows they stand for, smallest first. */
  readonly numbers: readonly number[];
  /** How many more come in here than are drawn. */
  readonly more: number;
}

/** Those of the steps nearest to one, as many as a narrow picture has room for; each with fewer numbers. */
export function nearestGroups(
  groups: readonly BalloonGroup[],
  at: number,
  most: number,
  numbersEach: number,
): readonly BalloonGroup[] {
  const far = ({ step }: BalloonGroup): number => Math.abs(step - at);
  return [...groups]
    .sort((a, b) => far(a) - far(b) || b.step - a.step)
    .slice(0, most)
    .map(({ step, numbers, more }) => ({
      step,
      numbers: numbers.slice(0, numbersEach),
      more: more + Math.max(0, numbers.length - numbersEach),
    }))
    .sort((a, b) => b.step - a.step);
}

/**
 * Ties rows of the list to the step from which on they come along in every heavier kit up to the planned one.
 *
 * @param ids Belongings in the order of the list; row n has the number n + 1.
 */
export function balloonGroups(
  steps: readonly Step[],
  ids: readonly string[],
  most: number,
): readonly BalloonGroup[] {
  const last = steps.findIndex(({ kit }) => kit);
  const aboard = steps.map(({ belongings }) => new Set(belongings));
  const groups = new Map<number, number[]>();
  ids.forEach((id, row) => {
    let step = last;
    if (!(aboard[last]?.has(id) ?? false)) return;
    while (step > 0 && aboard[step - 1]?.has(id) === true) step -= 1;
    groups.set(step, [...(groups.get(step) ?? []), row + 1]);
  });
  return [...groups]
    .sort(([, a], [, b]) => (a[0] ?? 0) - (b[0] ?? 0))
    .slice(0, most)
    .map(([step, numbers]) => ({ step, numbers: numbers.slice(0, 3), more: Math.max(0, numbers.length - 3) }))
    .sort((a, b) => b.step - a.step);
}
