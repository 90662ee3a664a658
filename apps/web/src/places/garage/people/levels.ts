/** Steps of skill, see the catalogue's `Skill`. */
export const LEVELS = ['1', '2', '3', '4', '5'] as const;
export type Level = (typeof LEVELS)[number];

/** The step that a recorded skill stands for. */
export function levelOf(skill: number): Level {
  return LEVELS[Math.min(LEVELS.length, Math.max(1, Math.round(skill))) - 1] ?? '1';
}
