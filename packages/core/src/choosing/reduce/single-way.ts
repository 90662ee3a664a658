import { replaceNeed } from './draft.ts';
import type { Draft } from './draft.ts';

/**
 * A need with one way left is met exactly when all of that way is there, so whoever asks for the need may ask for the
 * way's pieces and smaller needs instead. One variable and its rows go; nothing else changes.
 */
export function contractSingleWay(draft: Draft, n: number): boolean {
  const need = draft.needs[n];
  const way = need?.kind === 'any' && need.ways.length === 1 ? need.ways[0] : undefined;
  if (!way) return false;
  replaceNeed(draft, n, way);
  return true;
}
