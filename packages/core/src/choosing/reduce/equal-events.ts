import type { Draft, DraftOption } from './draft.ts';

/**
 * Events with the same options merge: gains are added.
 *
 * With options listed by falling gain in both, and the same demands in the same order, the first complete option is the
 * best one for both events at once, so the sum of the two best gains is the best of the summed gains. (Were the order
 * different in one of them this would not hold, and they are left apart.)
 */
export function mergeEqualEvents(draft: Draft): void {
  const seen = new Map<string, DraftOption[]>();
  const kept: DraftOption[][] = [];
  for (const event of draft.events) {
    const ordered = [...event].sort((a, b) => b.gain - a.gain);
    const key = ordered.map(({ atoms }) => atoms.join(' ')).join('|');
    const first = seen.get(key);
    if (!first) {
      const copy = ordered.map(({ atoms, gain }) => ({ atoms, gain }));
      seen.set(key, copy);
      kept.push(copy);
      continue;
    }
    ordered.forEach(({ gain }, i) => {
      const option = first[i];
      if (option) option.gain += gain;
    });
    draft.changes++;
  }
  draft.events = kept;
}
