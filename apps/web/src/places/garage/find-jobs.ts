import type { ListedJob } from '../../worker/trip/protocol.ts';

/** Jobs whose title or number has every word that was typed, those already chosen left out. */
export function findJobs(
  jobs: readonly ListedJob[],
  typed: string,
  chosen: readonly string[],
): readonly ListedJob[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return [];
  return jobs.filter(({ id, title }) => {
    if (chosen.includes(id)) return false;
    const text = `${id} ${title}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
